import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import { addDays, day, type Weekday } from "#shared/day/day.ts";
import { fold } from "#shared/tube/fold.ts";
import { anyFacts, anyHistory, anyLife } from "#tests/support/any-history.ts";
import { voided } from "#tests/support/factories.ts";
import { ownSteps } from "#tests/support/steps.ts";
import { books, history } from "#tests/support/told.ts";
import { type Books, openSteps } from "./open-steps.ts";
import { compareSteps, ownerOn } from "./step.ts";

const any = fc.oneof(anyHistory, anyLife);

/** Clinics with odd weeks, closures of up to 100 days, and one that never opens. */
const anyCalendar: fc.Arbitrary<ClinicCalendar> = fc.record({
  version: fc.constant(1),
  openWeekdays: fc.uniqueArray(fc.integer({ min: 1, max: 7 }).map((weekday) => weekday as Weekday)),
  closures: fc.array(
    fc.tuple(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 100 })).map(([start, length]) => {
      const from = addDays(day("2026-07-01"), start);
      return { from, to: addDays(from, length), reason: "closed" };
    }),
    { maxLength: 2 },
  ),
});

const anyBooks: fc.Arbitrary<Books> = fc
  .tuple(anyCalendar, fc.constantFrom(null, day("1950-01-01"), day("2012-05-05")))
  .map(([of, bornOn]) => books({ calendar: () => of, bornOn }));

describe("open steps, of any history", () => {
  it("every record that has not ended has one, with a day and an owner; one that has ended has none of its own but the call after its removal", () => {
    fc.assert(
      fc.property(any, anyBooks, (events, of) => {
        const patient = fold(events);
        const steps = openSteps(patient, of);
        for (const tube of patient.tubes)
          expect(ownSteps(steps, tube).length > 0).toBe(tube.status !== "ended");
        for (const { dueOn, owner } of steps) {
          expect(dueOn).toMatch(/^\d{4}-\d\d-\d\d$/);
          expect(owner.role).toBeTruthy();
        }
      }),
    );
  });

  it("every contradiction is one of them", () => {
    fc.assert(
      fc.property(any, anyBooks, (events, of) => {
        const patient = fold(events);
        const odd = openSteps(patient, of).filter(({ kind }) => kind === "contradiction");
        expect(odd).toHaveLength(patient.contradictions.length);
      }),
    );
  });

  it("depend on events and books alone: asked twice, they are equal, and each has its own id", () => {
    fc.assert(
      fc.property(any, anyBooks, (events, of) => {
        const steps = openSteps(fold(events), of);
        expect(openSteps(fold(structuredClone(events)), of)).toEqual(steps);
        expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
      }),
    );
  });

  it("have earliest, target and latest in order", () => {
    fc.assert(
      fc.property(any, anyBooks, (events, of) => {
        for (const { earliest, target, latest } of openSteps(fold(events), of)) {
          const known = [earliest, target, latest].filter((on) => on !== null);
          expect(known).toEqual(known.toSorted());
        }
      }),
    );
  });

  it("stand in one total order, the next step first", () => {
    fc.assert(
      fc.property(any, anyBooks, (events, of) => {
        const steps = openSteps(fold(events), of);
        for (const [n, step] of steps.entries())
          for (const after of steps.slice(n + 1)) {
            expect(compareSteps(step, after)).toBe(-1);
            expect(compareSteps(after, step)).toBe(1);
          }
      }),
    );
  });

  it("are unchanged by an entry that was added and voided", () => {
    fc.assert(
      fc.property(anyFacts, anyBooks, (events, of) => {
        fc.pre(events.length > 0);
        const before = events.slice(0, -1);
        const [undo] = history(voided(events.at(-1)!.id));
        const undone = [...events, { ...undo!, id: "undo", seq: events.length + 1 }];
        expect(openSteps(fold(undone), of)).toEqual(openSteps(fold(before), of));
      }),
    );
  });

  it("only climb: whoever has a step later stands on the same rung or higher", () => {
    fc.assert(
      fc.property(any, anyBooks, fc.nat({ max: 400 }), (events, of, away) => {
        const today = addDays(day("2026-06-01"), away);
        for (const step of openSteps(fold(events), of))
          expect(ownerOn(step, addDays(today, 1)).rung).toBeGreaterThanOrEqual(ownerOn(step, today).rung);
      }),
    );
  });
});
