import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Chain, chainOf } from "#shared/fit/chain.ts";
import type { Coaxial } from "#shared/fit/coaxial.ts";
import type { Place, TubeInside } from "#shared/fit/inside.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { cm, coaxial, exampleRows, F, mm } from "#tests/factories/coaxial.ts";
import { blank, estimated, inch, reported, takes } from "#tests/factories/tube-inside.ts";

/** An inside in millimetres, measured without a tolerance of its own: the row's 0.05 mm counts. */
const inside = (figure: number, place: Place = "end hole"): TubeInside => ({
  ...blank,
  bores: [{ place, inside: confirmed(mm(figure)), tolerance: null }],
});

/** "stiffener in tube: passes, long enough" of each pair, the innermost first. */
const told = ({ pairs }: Chain): string[] =>
  pairs.map(
    ({ inner, outer, bySize, byLength }) =>
      `${inner.sort} in ${outer.sort}: ${bySize.verdict}, ${byLength.verdict}`,
  );
const firsts = ({ bySize, byLength }: Chain): string[] =>
  [bySize, byLength].map(
    (each) => `${each?.verdict}: ${each?.first.inner.sort} in ${each?.first.outer.sort}`,
  );

const wire = coaxial("wire", { outside: inch(0.035), length: cm(145) });
const stiffener = coaxial("stiffener", { outside: F(5), inside: takes(0.038), length: cm(30) });
const tube = coaxial("tube", { outside: F(8), inside: inside(2.2), length: cm(25) });

describe("chains worked by hand, under the example's rows", () => {
  it("a wire in a needle", () => {
    // 0.018 in = 0.4572 mm; + 0.0254 clearance + 0.05 tolerance = 0.5326: passes 0.6, and 20 cm of needle are less than 60 of wire.
    const thin = coaxial("wire", { outside: inch(0.018), length: cm(60) });
    const needle = coaxial("needle", {
      outside: inch(0.03225),
      inside: inside(0.6, "shaft"),
      length: cm(20),
    });
    // A needle that is measured in the shaft alone leaves open what its tip lets out.
    expect(told(chainOf([thin, needle], exampleRows))).toEqual(["wire in needle: cannot tell, long enough"]);
    const measured = { ...needle, inside: inside(0.6) };
    expect(told(chainOf([thin, measured], exampleRows))).toEqual(["wire in needle: passes, long enough"]);
  });

  it("a wire in a stiffener in a tube in a sheath", () => {
    // Wire 0.035 under a label of 0.038. 5 F is 1.67, stated 1.7 (ISO 20696:2018, 5.5.2), at most 2.03; + 0.0254 + 0.05 = 2.1054: passes 2.2.
    // 8 F is 2.67, stated 2.7, at most 3.03; + 0.0254 + 0.05 = 3.1054: passes 3.2. Lengths 145, 30, 25, 20 cm.
    const sheath = coaxial("sheath", { inside: inside(3.2), length: cm(20) });
    const chain = chainOf([wire, stiffener, tube, sheath], exampleRows);
    expect(told(chain)).toEqual([
      "wire in stiffener: passes, long enough",
      "stiffener in tube: passes, long enough",
      "tube in sheath: passes, long enough",
    ]);
    expect(firsts(chain)).toEqual(["passes: wire in stiffener", "long enough: wire in stiffener"]);
  });

  it("a jejunal extension in a gastrostomy", () => {
    // 9 F is 3.0 exactly and stated so, at most 3.33; + 0.0254 + 0.05 = 3.4054: passes 4.0.
    // 12 F is 4.0, at least 3.67; 3.6 + 0.05 - 0.0254 = 3.6246 is less.
    const extension = coaxial("extension", { outside: F(9), length: cm(45) });
    const gastrostomy = (width: number) => coaxial("tube", { inside: inside(width), length: cm(22) });
    expect(told(chainOf([extension, gastrostomy(4)], exampleRows))).toEqual([
      "extension in tube: passes, long enough",
    ]);
    const thick = { ...extension, outside: confirmed(F(12)) };
    expect(told(chainOf([thick, gastrostomy(3.6)], exampleRows))).toEqual([
      "extension in tube: does not pass, long enough",
    ]);
  });

  it("a sheath over a cut tube: the tube goes in, and must come out behind", () => {
    // 12 F is 4.0, at most 4.33; + 0.0254 + 0.05 = 4.4054: passes 4.5. 18 cm are left of the tube, the sheath is 23 long: 5 too short.
    const cut = coaxial("tube", { outside: F(12), length: cm(18) });
    const sheath = coaxial("sheath", { inside: inside(4.5), length: cm(23) });
    const chain = chainOf([cut, sheath], exampleRows);
    expect(told(chain)).toEqual(["tube in sheath: passes, too short"]);
    expect(chain.byLength?.first.byLength).toEqual({ verdict: "too short", by: cm(5) });
  });
});

describe("the pair that decides", () => {
  const tight = { ...tube, inside: inside(1.2) };
  const unknown = { ...tube, inside: blank };
  const told8 = { ...tube, outside: reported(F(8)) };
  const wide = coaxial("sheath", { inside: inside(3.2), length: cm(20) });

  it.each<[string, readonly Coaxial[], string]>([
    // 5 F is at least 1.37 mm; 1.2 + 0.05 - 0.0254 = 1.2246.
    ["is the one that stops", [wire, stiffener, tight, wide], "does not pass: stiffener in tube"],
    ["stops before one that nobody can tell", [wire, unknown, tight], "does not pass: tube in tube"],
    [
      "of two that stop is the inner",
      [wire, stiffener, tight, { ...wide, inside: inside(2) }],
      "does not pass: stiffener in tube",
    ],
    [
      "nobody can tell before doubt",
      [{ ...wire, outside: reported(inch(0.035)) }, stiffener, unknown],
      "cannot tell: stiffener in tube",
    ],
    ["doubt before what passes", [stiffener, told8, wide], "doubt: tube in sheath"],
    ["of two that pass is the inner", [wire, stiffener, tube], "passes: wire in stiffener"],
  ])("%s", (_name, things, expected) => {
    const [bySize] = firsts(chainOf(things, exampleRows));
    expect(bySize).toBe(expected);
  });

  const long = (length: Coaxial["length"]): Coaxial => coaxial("tube", { length });
  it.each<[string, readonly Coaxial["length"][], string, number]>([
    [
      "too short before all",
      [confirmed(cm(30)), unknownFact, confirmed(cm(20)), confirmed(cm(25))],
      "too short",
      2,
    ],
    ["nobody can tell before doubt", [estimated(cm(30)), confirmed(cm(20)), unknownFact], "cannot tell", 1],
    ["doubt before long enough", [confirmed(cm(30)), confirmed(cm(20)), reported(cm(10))], "doubt", 1],
    ["else the innermost", [confirmed(cm(30)), confirmed(cm(20)), confirmed(cm(10))], "long enough", 0],
  ])("by length: %s", (_name, lengths, verdict, index) => {
    const { byLength, pairs } = chainOf(lengths.map(long), exampleRows);
    expect(byLength?.verdict).toBe(verdict);
    expect(byLength?.first).toBe(pairs[index]);
  });

  it("size and length do not hide one another", () => {
    const short = { ...stiffener, length: confirmed(cm(20)) };
    expect(firsts(chainOf([wire, short, tight, wide], exampleRows))).toEqual([
      "does not pass: stiffener in tube",
      "too short: stiffener in tube",
    ]);
  });
});

describe("what is no chain", () => {
  it.each([[[]], [[wire]], [[tube]]])("%j has no pair and no verdict", (things) => {
    expect(chainOf(things, exampleRows)).toEqual({ pairs: [], bySize: null, byLength: null });
  });

  it("a wire anywhere but innermost is solid", () => {
    expect(() => chainOf([stiffener, wire], exampleRows)).toThrow(new RangeError("a wire has no inside"));
    expect(() => chainOf([wire, tube, wire], exampleRows)).toThrow(RangeError);
  });

  it("holds the outer's inside against the inner's outside, as what it goes as", () => {
    const [pair] = chainOf([{ ...stiffener, tolerance: mm(0.1) }, tube], exampleRows).pairs;
    expect(pair?.passage).toEqual({
      goes: { as: "device", outside: confirmed(F(5)), tolerance: mm(0.1) },
      inside: tube.inside,
      rows: exampleRows,
    });
    expect(chainOf([wire, tube], exampleRows).pairs[0]?.passage.goes.as).toBe("wire");
  });
});

it("law: a wire that is innermost never throws", () => {
  const outer = fc.constantFrom<Coaxial>(stiffener, tube, coaxial("sheath"), coaxial("needle"));
  fc.assert(
    fc.property(fc.array(outer), (around) => {
      expect(chainOf([wire, ...around], exampleRows).pairs).toHaveLength(around.length);
    }),
  );
});
