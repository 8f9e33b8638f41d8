import { describe, expect, it } from "vitest";
import { examplePlanning } from "#shared/protocol/example-planning.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";
import { reported } from "#tests/factories/tube-inside.ts";
import { dilatorsBetween, upsizeStep } from "./upsize-step.ts";

const F = (figure: number): Length => lengthOf(figure, "F");
/** The example's row: usual step 2 F, a note over 4 F. */
const row = examplePlanning?.upsize ?? null;
const eight = confirmed(F(8));

describe("the step in French", () => {
  it.each<[number, string]>([
    [8.5, "within the usual step"],
    [10, "within the usual step"],
    [10.2, "over the usual step"],
    [12, "over the usual step"],
    [12.01, "over the step with a note"],
    [14, "over the step with a note"],
    [8, "no upsize"],
    [7, "no upsize"],
  ])("8 F to %d F: %s", (to, verdict) => {
    expect(upsizeStep(eight, confirmed(F(to)), row).verdict).toBe(verdict);
  });

  it("8 F to 12 F is a step of 4 F, against 2 and 4", () => {
    expect(upsizeStep(eight, confirmed(F(12)), row)).toEqual({
      verdict: "over the usual step",
      by: F(4),
      from: F(8),
      to: F(12),
      sure: true,
      usual: F(2),
      noteOver: F(4),
    });
  });

  it("says when a size was not seen here", () => {
    expect(upsizeStep(reported(F(8)), confirmed(F(10)), row)).toMatchObject({ sure: false });
    expect(upsizeStep(confirmed(F(8)), reported(F(10)), row)).toMatchObject({ sure: false });
  });

  it.each<[Fact<Length>, Fact<Length>, typeof row, readonly string[]]>([
    [unknownFact, eight, row, ["size in place"]],
    [eight, unknownFact, row, ["size to come"]],
    [eight, confirmed(F(10)), null, ["row"]],
    [unknownFact, unknownFact, null, ["size in place", "size to come", "row"]],
  ])("cannot tell case %#", (inPlace, toCome, by, missing) => {
    expect(upsizeStep(inPlace, toCome, by)).toEqual({ verdict: "cannot tell", missing });
  });
});

describe("dilators between the sizes and one above", () => {
  const shelf = [14, 8, 12, 9, 10, 16].map((size) => ({
    name: `dilator ${size}`,
    outside: confirmed(F(size)),
  }));
  const names = (found: ReturnType<typeof dilatorsBetween>) => ({
    between: found.between.map(({ name }) => name),
    above: found.above?.name ?? null,
  });

  it("8 F to 12 F: 9, 10 and 12, and 14 above", () => {
    expect(names(dilatorsBetween(shelf, { from: F(8), to: F(12) }))).toEqual({
      between: ["dilator 9", "dilator 10", "dilator 12"],
      above: "dilator 14",
    });
  });

  it("one of unknown size stands in nobody's way", () => {
    const [first, ...rest] = shelf;
    const some = [first, { name: "no size", outside: unknownFact }, ...rest].flatMap((each) => each ?? []);
    expect(dilatorsBetween(some, { from: F(8), to: F(12) })).toEqual(
      dilatorsBetween(shelf, { from: F(8), to: F(12) }),
    );
  });

  it("has none above the thickest, and leaves out one of unknown size", () => {
    const some = [...shelf, { name: "no size", outside: unknownFact }];
    expect(names(dilatorsBetween(some, { from: F(14), to: F(16) }))).toEqual({
      between: ["dilator 16"],
      above: null,
    });
  });
});
