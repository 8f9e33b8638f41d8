import { describe, expect, it } from "vitest";
import type { Day } from "#shared/day/day.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { likelyAct, tubesTogether } from "./tubes-together.ts";

const step = (
  tubeId: string,
  kind: StepKind,
  window: readonly [string | null, string | null, string | null],
) => {
  const [earliest, target, latest] = window as readonly (Day | null)[];
  return {
    tubeId,
    kind,
    earliest: earliest ?? null,
    target: target ?? null,
    latest: latest ?? null,
    dueOn: (target ?? latest ?? "2026-11-02") as Day,
  };
};
const tube = (id: string, status: "in" | "out, undecided" | "ended" = "in") => ({ id, status });

/** Two nephrostomies out of step: the left is due in November, the right two weeks later. */
const left = step("left", "exchange", ["2026-10-26", "2026-11-09", "2026-11-20"]);
const right = step("right", "exchange", ["2026-11-09", "2026-11-23", "2026-12-04"]);

describe("which tubes come together", () => {
  it("two clocks out of step meet in one visit, where neither is too early nor too late", () => {
    expect(tubesTogether([right, left], [tube("right"), tube("left")], null)).toEqual([
      { tubeId: "left", act: "exchange" },
      { tubeId: "right", act: "exchange" },
    ]);
  });

  it("not where the second would be done before its own earliest date", () => {
    const later = step("right", "exchange", ["2026-11-21", "2026-12-07", "2026-12-18"]);
    expect(tubesTogether([left, later], [tube("left"), tube("right")], null)).toEqual([
      { tubeId: "left", act: "exchange" },
    ]);
  });

  it("the tube that is asked for comes first, whichever is due before it", () => {
    expect(tubesTogether([left, right], [tube("left"), tube("right")], "right")[0]).toEqual({
      tubeId: "right",
      act: "exchange",
    });
  });

  it("a tube that is out does not wait for another", () => {
    const out = step("left", "tube out", [null, "2026-11-02", null]);
    expect(tubesTogether([out, right], [tube("left", "out, undecided"), tube("right")], null)).toEqual([
      { tubeId: "left", act: "exchange" },
    ]);
  });

  it("what is only reviewed is not brought along; where it is asked for, what is due comes with it", () => {
    const drain = step("drain", "review", [null, "2026-11-09", "2026-12-04"]);
    expect(tubesTogether([left, drain], [tube("left"), tube("drain")], null)).toEqual([
      { tubeId: "left", act: "exchange" },
    ]);
    expect(tubesTogether([left, drain], [tube("left"), tube("drain")], "drain")).toEqual([
      { tubeId: "drain", act: "check" },
      { tubeId: "left", act: "exchange" },
    ]);
  });

  it("a decided removal is what the visit is for", () => {
    const decided = [left, step("left", "remove", [null, "2026-11-06", null])];
    expect(likelyAct(decided, tube("left"))).toBe("removal");
  });

  it("nobody without an open date", () => {
    expect(tubesTogether([], [tube("left", "ended")], null)).toEqual([]);
  });
});
