import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ClinicCalendar, isOpen } from "#shared/day/clinic-days.ts";
import { addDays, day } from "#shared/day/day.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Pins, TubeEvent } from "#shared/tube/event.ts";
import { fold } from "#shared/tube/fold.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { anyHistory, anyLife } from "#tests/support/any-history.ts";
import { datesConfirmed } from "#tests/support/factories.ts";
import { books, history } from "#tests/support/told.ts";
import { type Books, openSteps } from "./open-steps.ts";
import { allPinnedTo, movedSteps, stepDays } from "./repinned.ts";
import { callKinds, type OpenStep } from "./step.ts";

const any = fc.oneof(anyHistory, anyLife);
const newest: Pins = { protocol: 2, calendar: 2 };

/** Another table: every interval so many days shorter, and other rows beside them. */
const anyOtherTable: fc.Arbitrary<Protocol> = fc
  .record({
    shorter: fc.integer({ min: 0, max: 20 }),
    asked: fc.integer({ min: 1, max: 9 }),
    call: fc.nat(5),
  })
  .map(({ shorter, asked, call }) => ({
    ...exampleProtocol,
    version: 2,
    intervals: exampleProtocol.intervals.map((row) => ({
      ...row,
      target: row.target === null ? null : Math.max(0, row.target - shorter),
      latest: row.latest === null ? null : row.latest - Math.min(shorter, 7),
    })),
    escalation: { ...exampleProtocol.escalation, daysPastTarget: asked },
    firstCall: { ...exampleProtocol.firstCall, from: call, to: call + 2 },
  }));

const anyOtherCalendar: fc.Arbitrary<ClinicCalendar> = fc
  .tuple(fc.integer({ min: 0, max: 120 }), fc.integer({ min: 0, max: 20 }))
  .map(([start, length]) => {
    const from = addDays(day("2026-07-01"), start);
    return {
      version: 2,
      openWeekdays: [1, 2, 3, 4, 5],
      closures: [{ from, to: addDays(from, length), reason: "closed" }],
    };
  });

const anyBooks: fc.Arbitrary<Books> = fc.tuple(anyOtherTable, anyOtherCalendar).map(([table, calendar]) => {
  const first = books({});
  return {
    ...first,
    protocol: (version) => (version === 2 ? table : first.protocol(version)),
    calendar: (version) => (version === 2 ? calendar : first.calendar(version)),
  };
});

const afresh = (events: readonly TubeEvent[]): readonly TubeEvent[] =>
  events.map((event) => (event.pins === null ? event : { ...event, pins: newest }));

const daysOf = (step: OpenStep) => stepDays.map((name) => step[name]);
/** The one call of a patient is the same step, whichever of the tubes asks for it first. */
const nameOf = ({ id, kind }: { readonly id: string; readonly kind: StepKind }): string =>
  callKinds.includes(kind) ? "the call" : id;
const daysByName = (steps: readonly OpenStep[]) =>
  new Map(steps.map((step) => [nameOf(step), [step.kind, ...daysOf(step)]]));

describe("what newer tables would move, of any history", () => {
  it("is what computing afresh with them gives, and nothing else", () => {
    fc.assert(
      fc.property(any, anyBooks, (events, of) => {
        const patient = fold(events);
        const moved = movedSteps(patient, of, newest);
        const expected = daysByName(openSteps(repinnedAfresh(events), of));
        const told = daysByName(openSteps(patient, of));
        const byStep = new Map(moved.map((step) => [nameOf({ ...step, id: step.stepId }), step]));
        for (const name of new Set([...expected.keys(), ...told.keys(), ...byStep.keys()])) {
          const step = byStep.get(name);
          const stood = told.get(name);
          const next = expected.get(name);
          if (step === undefined) expect([name, next]).toEqual([name, stood]);
          else {
            const { kind, proposed } = step;
            const days = proposed === null ? undefined : [kind, ...stepDays.map((of) => proposed[of])];
            expect([name, days]).toEqual([name, next]);
            expect(next).not.toEqual(stood);
          }
        }
      }),
    );
  });

  it("stands once all of it is confirmed: as computed afresh, and nothing is left to move", () => {
    fc.assert(
      fc.property(any, anyBooks, (events, of) => {
        const moved = movedSteps(fold(events), of, newest);
        const tubes = [...new Set(moved.map(({ tubeId }) => tubeId))];
        const confirmations = history(
          ...tubes.map((tube) => datesConfirmed({ on: "2027-12-31", tube, pins: newest })),
        ).map((event, n) => ({ ...event, id: `confirmed-${n}`, seq: events.length + n + 1 }));
        const after = fold([...events, ...confirmations]);
        expect(movedSteps(after, of, newest)).toEqual([]);
        const days = daysByName(openSteps(after, of));
        expect(days).toEqual(daysByName(openSteps(repinnedAfresh(events), of)));
      }),
    );
  });

  it("is nothing where everything goes by them already, or where they say the same", () => {
    fc.assert(
      fc.property(any, anyBooks, (events, of) => {
        const pinned = repinnedAfresh(events);
        expect(allPinnedTo(newest, pinned.tubes)).toBe(true);
        expect(movedSteps(pinned, of, newest)).toEqual([]);
        const first = books({});
        const same: Books = {
          ...first,
          protocol: () => first.protocol(1),
          calendar: () => first.calendar(1),
        };
        expect(movedSteps(fold(events), same, newest)).toEqual([]);
      }),
    );
  });

  it("puts no date of a clinic that opens on a day on which it is shut", () => {
    fc.assert(
      fc.property(any, anyBooks, (events, of) => {
        const calendar = of.calendar(2);
        for (const { kind, proposed } of movedSteps(fold(events), of, newest))
          if (kind === "exchange" && proposed !== null)
            for (const on of [proposed.earliest, proposed.target, proposed.latest])
              expect(on === null || isOpen(on, calendar)).toBe(true);
      }),
    );
  });
});

/** The same events as if every clock that runs had started under the newest tables; what has ended keeps those that it ended under. */
function repinnedAfresh(events: readonly TubeEvent[]) {
  const patient = fold(afresh(events));
  const then = new Map(fold(events).tubes.map(({ id, pins }) => [id, pins]));
  const pinsOf = (tube: TubeState): Pins =>
    tube.status === "ended" ? (then.get(tube.id) ?? newest) : newest;
  return { ...patient, tubes: patient.tubes.map((tube) => ({ ...tube, pins: pinsOf(tube) })) };
}
