import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lengthOf } from "#shared/size/exact-length.ts";
import { type Length, type LengthUnit, unitsPer } from "#shared/size/length.ts";
import { printLength } from "#shared/size/print-length.ts";
import { type LengthField, readLength } from "#shared/size/read-length.ts";
import { type SizeRange, sizedThings, sizeRanges } from "#shared/size/size-ranges.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

const field = (thing: LengthField["thing"], bare: LengthField["bare"] = "refuse"): LengthField => ({
  thing,
  bare,
});

const sentence = (text: string, of: LengthField): string => {
  const read = readLength(text, of);
  return read.ok ? "read" : refusalSentence(read.refusal);
};

describe("what people type", () => {
  it.each([
    ["8 F", "tube outside", 8, "F"],
    ["8F", "tube outside", 8, "F"],
    ["8f", "tube outside", 8, "F"],
    ["8fr", "tube outside", 8, "F"],
    ["8 Fr.", "tube outside", 8, "F"],
    ["8-French", "tube outside", 8, "F"],
    ["8.5Fr", "tube outside", 8.5, "F"],
    ["8,5 F", "tube outside", 8.5, "F"],
    ["10.2 Ch", "tube outside", 10.2, "F"],
    ["  12 F ", "tube outside", 12, "F"],
    ["2.7 mm", "tube outside", 2.7, "mm"],
    ["2,7 mm", "tube outside", 2.7, "mm"],
    [".035 in", "wire", 0.035, "in"],
    ['0.035"', "wire", 0.035, "in"],
    ["0.035″", "wire", 0.035, "in"],
    ["0,035 in", "wire", 0.035, "in"],
    [",035 inch", "wire", 0.035, "in"],
    ["0.889mm", "takes", 0.035, "in"],
    ["1.90 mm", "bore", 1.9, "mm"],
    ["25 cm", "tube length", 25, "cm"],
    ["250 mm", "tube length", 25, "cm"],
    ["145 cm", "wire length", 145, "cm"],
    ["0 cm", "external length", 0, "cm"],
    ["0 mm", "bore tolerance", 0, "mm"],
  ] as const)("%j as %s is %s %s, confirmed", (text, thing, figure, unit) => {
    expect(readLength(text, field(thing))).toEqual({
      ok: true,
      value: { certainty: "confirmed", value: lengthOf(figure, unit) },
    });
  });

  it.each(["~8 F", "~ 8F", "~8,0 fr"])("%j is an estimate", (text) => {
    expect(readLength(text, field("tube outside"))).toEqual({
      ok: true,
      value: { certainty: "estimated", value: lengthOf(8, "F") },
    });
  });

  it.each(["?", " ? "])("%j is unknown and carries no value", (text) => {
    expect(readLength(text, field("tube outside"))).toEqual({ ok: true, value: { certainty: "unknown" } });
  });
});

describe("a bare number", () => {
  it.each([
    ["8", "tube outside", "F", 8],
    ["8.5", "tube outside", "F", 8.5],
    [".035", "wire", "in", 0.035],
    ["0.035", "wire", "in", 0.035],
    ["~0.035", "wire", "in", 0.035],
    ["25", "tube length", "cm", 25],
  ] as const)("%j takes the unit of its field: %s in %s", (text, thing, unit, figure) => {
    expect(readLength(text, field(thing, unit))).toMatchObject({
      ok: true,
      value: { value: lengthOf(figure, unit) },
    });
  });

  it("takes another unit when one is typed", () => {
    expect(readLength("2.7 mm", field("tube outside", "F"))).toMatchObject({
      value: { value: lengthOf(2.7, "mm") },
    });
  });

  it.each(["0.035", ".035", "8", "8.5", "8,5", "~8"])("%j asks where no unit stands", (text) => {
    expect(sentence(text, field("wire"))).toBe(`"${text}" needs a unit: F, in, mm, cm or G.`);
  });

  it.each(["8,5", "0,035", ",5"])("%j asks even where a unit stands: its comma may be a slip", (text) => {
    expect(readLength(text, field("tube outside", "F"))).toMatchObject({
      refusal: { code: "length-needs-unit" },
    });
  });
});

describe("refusals say what to mend", () => {
  it.each([
    ["800 F", "tube outside", "800 F is outside what is made (3 to 40 F). Check the number and the unit."],
    [
      ".035 in",
      "tube outside",
      ".035 in is outside what is made (3 to 40 F). Check the number and the unit.",
    ],
    ["8 mm", "wire", "8 mm is outside what is made (0.01 to 0.052 in). Check the number and the unit."],
    ["-5 cm", "external length", '"-5 cm" must be more than zero.'],
    ["-8 F", "tube outside", '"-8 F" must be more than zero.'],
    ["−8 F", "tube outside", '"−8 F" must be more than zero.'],
    ["0 F", "tube outside", '"0 F" must be more than zero.'],
    ["0.000 in", "wire", '"0.000 in" must be more than zero.'],
    [
      "1,500",
      "wire length",
      '"1,500" can be read two ways. Type a point for decimals and no comma for thousands.',
    ],
    [
      "1,500 mm",
      "wire length",
      '"1,500 mm" can be read two ways. Type a point for decimals and no comma for thousands.',
    ],
    ["8 F", "bore", '"8 F" does not tell an inside. Type it like 1.9 mm or 0.075 in.'],
    ["3 F", "takes", '"3 F" does not tell what wire a tube takes. Type it like 0.035 in or 0.889 mm.'],
    ["21 G", "wire", '"21 G" does not tell a wire\'s size. Type it like 0.035 in or 0.889 mm.'],
    ["100 F", "tube length", '"100 F" does not tell a tube\'s length. Type it like 25 cm or 250 mm.'],
    ["2.666667 mm", "tube outside", '"2.666667 mm" has more than 5 decimals. Round it.'],
    ["", "tube outside", "Type a size with its unit, or ? if it is unknown."],
  ] as const)("%j as %s: %s", (text, thing, said) => {
    expect(sentence(text, field(thing))).toBe(said);
  });

  it.each([
    "eight",
    "8 8 F",
    "8..5 F",
    "8.5.1 F",
    "1,50,000 F",
    "F",
    "8 furlongs",
    "8 F?",
    "+8 F",
    "1e1 F",
    "٨ F",
    "\u202e8 F",
    "<script>alert(1)</script>",
    "9".repeat(500),
    `${"9".repeat(500)} Q`,
  ])("%j is not read", (text) => {
    expect(readLength(text, field("tube outside", "F")).ok).toBe(false);
  });
});

const things = sizedThings.filter((thing) => thing !== "needle outside");

describe("the range of each thing", () => {
  it.each(things)("%s: both limits are read, one step outside is not", (thing) => {
    const { from, to, unit }: SizeRange = sizeRanges[thing];
    const read = (text: string) => readLength(text, field(thing, unit));
    const step = (figure: number, by: number) => (Math.round(figure * 1e5) + by) / 1e5;
    expect(read(String(from))).toMatchObject({ value: { value: lengthOf(from, unit) } });
    expect(read(String(to))).toMatchObject({ value: { value: lengthOf(to, unit) } });
    expect(read(step(to, 1).toFixed(5))).toMatchObject({ refusal: { code: "length-absurd" } });
    const below = step(from, -1);
    expect(read(below.toFixed(5))).toMatchObject({
      refusal: { code: below < 0 ? "length-not-positive" : "length-absurd" },
    });
  });

  it.each([
    // Practice, no source: the limits as agreed, in their own units.
    ["tube outside", 3, 40, "F"],
    ["wire", 0.01, 0.052, "in"],
    ["takes", 0.01, 0.052, "in"],
    ["tube length", 5, 150, "cm"],
    ["wire length", 30, 450, "cm"],
    ["external length", 0, 60, "cm"],
  ] as const)("%s: %s to %s %s", (thing, from, to, unit) => {
    expect(sizeRanges[thing]).toMatchObject({ from, to, unit });
  });
});

describe("print, then read", () => {
  it.each([
    ["tube outside", "F", 5_000],
    ["tube outside", "mm", 1_500],
    ["wire", "in", 381],
    ["wire", "mm", 1_500],
    ["bore", "mm", 1_500],
    ["tube length", "cm", 150_000],
  ] as const)("%s in %s comes back unchanged", (thing, unit: LengthUnit, grid) => {
    const range: SizeRange = sizeRanges[thing];
    const steps = (figure: number) => (lengthOf(figure, range.unit) as number) / grid;
    fc.assert(
      fc.property(
        fc.integer({ min: Math.ceil(steps(range.from)), max: Math.floor(steps(range.to)) }),
        (count) => {
          const length = (count * grid) as Length;
          expect(readLength(printLength(length, unit), field(thing))).toEqual({
            ok: true,
            value: { certainty: "confirmed", value: length },
          });
        },
      ),
    );
    expect(unitsPer[unit] % grid).toBe(0);
  });

  it("never throws and never reads a length outside the range", () => {
    const pieces = fc.array(
      fc.constantFrom("~", "?", "-", "8", "0", ".", ",", " ", "F", "in", '"', "mm", "G"),
    );
    fc.assert(
      fc.property(pieces, (typed) => {
        const read = readLength(typed.join(""), field("tube outside", "F"));
        if (!read.ok || read.value.certainty === "unknown") return;
        expect(read.value.value).toBeGreaterThanOrEqual(lengthOf(3, "F"));
        expect(read.value.value).toBeLessThanOrEqual(lengthOf(40, "F"));
      }),
    );
  });
});
