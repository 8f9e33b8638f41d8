import { describe, expect, it } from "vitest";
import { plannedPassages, type TubeInPlace } from "#shared/fit/planned-passages.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { blank, inch, rows, takes } from "#tests/factories/tube-inside.ts";

const eightFrench = confirmed(lengthOf(8, "F"));
const inPlace: TubeInPlace = { inside: takes(0.035), size: eightFrench, concerns: [], pastLatest: false };
const plan = { wire: confirmed(inch(0.038)), takes: confirmed(inch(0.038)), size: eightFrench };

describe("a planned exchange", () => {
  it("asks the wire of both tubes: one may stop what the other lets pass", () => {
    const { inPlace: old, toCome } = plannedPassages(plan, inPlace, rows);
    expect(old.answer.bySize.verdict).toBe("does not pass");
    expect(toCome.answer.bySize.verdict).toBe("passes");
  });

  it("cannot tell of a tube to come whose label nobody read, however large it is", () => {
    const { toCome } = plannedPassages({ ...plan, takes: unknownFact }, inPlace, rows);
    expect(toCome.answer.bySize).toMatchObject({
      verdict: "cannot tell",
      missing: [{ what: "takes or bores" }],
    });
  });

  it("cannot tell of either tube while the wire is unknown", () => {
    const { inPlace: old, toCome } = plannedPassages({ ...plan, wire: unknownFact }, inPlace, rows);
    expect(old.answer.bySize.verdict).toBe("cannot tell");
    expect(toCome.answer.bySize.verdict).toBe("cannot tell");
  });

  // job.md, hard case 35: two lines, so that one does not hide the other.
  it("passes by size and stands in doubt by state when crusted and overdue", () => {
    const worn = { ...inPlace, concerns: ["crusted"] as const, pastLatest: true };
    const { inPlace: old } = plannedPassages({ ...plan, wire: confirmed(inch(0.035)) }, worn, rows);
    expect(old.answer.bySize.verdict).toBe("passes");
    expect(old.answer.byState).toEqual({ state: "in doubt", concerns: ["crusted", "past latest date"] });
  });

  it("says nothing of the state of a tube still in its package", () => {
    expect(plannedPassages(plan, inPlace, rows).toCome.answer.byState).toEqual({ state: "not recorded" });
  });

  it("takes no inside from the outside of either tube", () => {
    const large = confirmed(lengthOf(24, "F"));
    const unread = { ...inPlace, inside: blank, size: large };
    const { inPlace: old, toCome } = plannedPassages(
      { ...plan, takes: unknownFact, size: large },
      unread,
      rows,
    );
    expect([old.answer.bySize.verdict, toCome.answer.bySize.verdict]).toEqual(["cannot tell", "cannot tell"]);
  });
});
