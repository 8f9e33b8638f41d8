import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addWorkingDays } from "#shared/day/clinic-days.ts";
import { day } from "#shared/day/day.ts";
import { instant } from "#shared/day/instant.ts";
import type { PrerequisiteRow } from "#shared/protocol/visit-rows.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import { christmas, prerequisiteRow, prerequisiteTable, things } from "#tests/factories/prerequisite.ts";
import { prerequisiteThings } from "./prerequisite-things.ts";
import { answerStates, openOf, prerequisitesOf, readyFrom, type VisitAhead } from "./prerequisites.ts";
import { visitActs } from "./visit-acts.ts";

const NOW = instant(Date.UTC(2026, 10, 12, 18, 0));
const kinds = ["nephrostomy", "abscess drain", "cecostomy"] as const;
const anyRow: fc.Arbitrary<PrerequisiteRow> = fc
  .record({
    thing: fc.constantFrom(...prerequisiteThings),
    acts: fc.subarray([...visitActs], { minLength: 1 }),
    kinds: fc.subarray<TubeKind>([...kinds]),
    workingDaysBefore: fc.integer({ min: 0, max: 8 }),
    leadHours: fc.option(fc.integer({ min: 1, max: 48 }), { nil: null }),
  })
  .map(prerequisiteRow);
const anyRows = fc.array(anyRow, { maxLength: 8 });
const anyTube = fc.record({ kind: fc.constantFrom<TubeKind>(...kinds), act: fc.constantFrom(...visitActs) });
const anyTubes = fc.array(anyTube, { maxLength: 4 });
const anyAnswers = fc.array(
  fc.record({
    thing: fc.constantFrom(...prerequisiteThings),
    state: fc.constantFrom(...answerStates),
    begun: fc.option(
      fc.integer({ min: -48, max: 48 }).map((hours) => instant(NOW + hours * 3_600_000)),
      { nil: null },
    ),
  }),
  { maxLength: 8 },
);
const on = day("2027-01-05");
const of = (tubes: VisitAhead["tubes"], rows: readonly PrerequisiteRow[]) =>
  prerequisitesOf({ tubes, on }, christmas, prerequisiteTable(...rows));

describe("laws of what has to be settled", () => {
  it("a visit asks for a thing by the earliest day and the longest lead of its tubes alone", () => {
    fc.assert(
      fc.property(anyTubes, anyRows, (tubes, rows) => {
        const alone = tubes.flatMap((tube) => of([tube], rows));
        const together = of(tubes, rows);
        expect(new Set(things(together))).toEqual(new Set(things(alone)));
        for (const one of together) {
          const own = alone.filter(({ thing }) => thing === one.thing);
          expect(one.settleBy).toBe(own.map(({ settleBy }) => settleBy).toSorted()[0]);
          expect(one.settleBy).toBe(addWorkingDays(on, -one.workingDaysBefore, christmas));
          expect(one.leadHours ?? 0).toBe(Math.max(0, ...own.map(({ leadHours }) => leadHours ?? 0)));
        }
      }),
    );
  });

  it("the order of the tubes changes nothing, that of the rows only the order of their words", () => {
    fc.assert(
      fc.property(anyTubes, anyRows, (tubes, rows) => {
        expect(of(tubes.toReversed(), rows)).toEqual(of(tubes, rows));
        const bare = (asked: ReturnType<typeof of>) => asked.map(({ rows: _rows, ...rest }) => rest);
        expect(bare(of(tubes, rows.toReversed()))).toEqual(bare(of(tubes, rows)));
      }),
    );
  });

  it("unknown never counts as settled: what is not open was answered, last, as settled or as not applying", () => {
    fc.assert(
      fc.property(anyTubes, anyRows, anyAnswers, (tubes, rows, answers) => {
        const all = of(tubes, rows);
        const open = things(openOf(all, answers));
        for (const { thing } of all) {
          const last = answers.findLast((answer) => answer.thing === thing)?.state;
          expect(open.includes(thing)).toBe(last !== "settled" && last !== "does not apply");
        }
      }),
    );
  });

  it("with time that passes, a visit is ready no sooner, and what has begun keeps its hour", () => {
    fc.assert(
      fc.property(anyTubes, anyRows, anyAnswers, (tubes, rows, answers) => {
        const all = of(tubes, rows);
        const later = instant(NOW + 3_600_000);
        const [first, second] = [readyFrom(all, answers, NOW), readyFrom(all, answers, later)];
        expect(second.cannotTell).toEqual(first.cannotTell);
        expect(second.from ?? 0).toBeGreaterThanOrEqual(first.from ?? 0);
        const begun = answers.map((answer) => ({ ...answer, begun: answer.begun ?? NOW }));
        expect(readyFrom(all, begun, later)).toEqual(first);
      }),
    );
  });
});
