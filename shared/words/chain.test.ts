import fc from "fast-check";
import { expect, it } from "vitest";
import { chainOf } from "#shared/fit/chain.ts";
import { type Coaxial, type CoaxialSort, coaxialSorts } from "#shared/fit/coaxial.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";
import { chainLines, pairLines, pairWords, reachLine } from "#shared/words/chain.ts";
import {
  blank,
  bore,
  bores,
  estimated,
  inch,
  noRows,
  reported,
  rows,
  someFact,
  someLength,
  takes,
} from "#tests/factories/tube-inside.ts";

const cm = (figure: number): Fact<Length> => confirmed(lengthOf(figure, "cm"));
const thing = (sort: CoaxialSort, said: Partial<Coaxial> = {}): Coaxial => ({
  sort,
  name: "",
  outside: unknownFact,
  tolerance: null,
  inside: blank,
  length: unknownFact,
  ...said,
});
const wire = (figure: number, said: Partial<Coaxial> = {}) =>
  thing("wire", { outside: confirmed(inch(figure)), ...said });

const lineOf = (inner: Coaxial, outer: Coaxial): string[] =>
  chainOf([inner, outer], rows).pairs.map(reachLine);

it.each<[string, Fact<Length>, Fact<Length>, string]>([
  ["longer", cm(45), cm(25), "Long enough: the wire reaches 20 cm out of the tip of the tube."],
  ["as long", cm(25), cm(25), "Long enough: the wire ends level with the tip of the tube."],
  ["shorter", cm(39), cm(45), "Too short: the wire is 6 cm too short to come out of the tip of the tube."],
  [
    "a little",
    cm(24.99),
    cm(25),
    "Too short: the wire is 0.01 cm too short to come out of the tip of the tube.",
  ],
  [
    "estimated",
    estimated(lengthOf(45, "cm")),
    cm(25),
    "Doubt: the wire reaches 20 cm out of the tip of the tube; a length is estimated, not confirmed.",
  ],
  [
    "reported and too short",
    cm(20),
    reported(lengthOf(25, "cm")),
    "Doubt: the wire is 5 cm too short to come out of the tip of the tube; a length is reported, not confirmed.",
  ],
  ["inner unknown", unknownFact, cm(25), "Cannot tell: length of the wire unknown."],
  ["outer unknown", cm(45), unknownFact, "Cannot tell: length of the tube unknown."],
  ["both unknown", unknownFact, unknownFact, "Cannot tell: length of the wire and of the tube unknown."],
])("by length: %s", (_name, inner, outer, line) => {
  expect(lineOf(wire(0.035, { length: inner }), thing("tube", { length: outer }))).toEqual([line]);
});

const stiffener = thing("stiffener", {
  outside: confirmed(lengthOf(5, "F")),
  inside: takes(0.038),
  length: cm(30),
});
const toCome = thing("tube", {
  name: "tube to come",
  inside: bores(bore("end hole", 0.045)),
  length: cm(25),
});

it("names the first that stops, with its size and what it lies in", () => {
  const chain = chainOf([wire(0.035, { length: cm(145) }), stiffener, toCome], rows);
  // 5 F is 1.6667 mm; 0.045 in is 1.143 mm; at its thinnest, 1.7 - 0.33 mm (ISO 20696:2018, 5.5.2), it is still 1.37 mm.
  expect(chainLines(chain)).toEqual({
    bySize:
      "Does not pass: the stiffener (5 F) in the tube to come: at the end hole the stiffener is 0.021 in (0.524 mm) too thick.",
    byLength: "Long enough: the wire reaches 115 cm out of the tip of the stiffener.",
  });
});

it("has nothing to say of one thing alone", () => {
  expect(chainLines(chainOf([toCome], rows))).toBeNull();
});

it.each<[Coaxial, string]>([
  [wire(0.035), "the wire (0.035 in) in the tube"],
  [wire(0.035, { name: "Standard, 145 cm" }), 'the wire "Standard, 145 cm" (0.035 in) in the tube'],
  [thing("needle", { outside: confirmed(inch(0.03225)) }), "the needle (21 G) in the tube"],
  [thing("tube", { name: "the tube in place" }), "the tube in place in the tube"],
  [thing("extension", { name: "jejunal extension" }), "the jejunal extension in the tube"],
])("a pair is named as people name it", (inner, words) => {
  expect(pairWords({ inner, outer: thing("tube") })).toBe(words);
});

it("names what goes and what it goes through where something is missing", () => {
  const [inSheath] = chainOf([thing("extension"), thing("sheath")], rows).pairs.map(pairLines);
  expect(inSheath?.bySize).toBe(
    "Cannot tell: record the size of the extension; and what extension the sheath takes, or its bores.",
  );
  const measured = thing("tube", { inside: bores(bore("end hole", 0.05)) });
  const [noRow] = chainOf(
    [thing("extension", { outside: confirmed(inch(0.04)) }), measured],
    noRows,
  ).pairs.map(pairLines);
  expect(noRow?.bySize).toBe(
    "Cannot tell: the clinic's protocol has no row for the clearance of an extension in a measured bore and the tolerance of the outside of an extension.",
  );
});

const someThing = (sorts: readonly CoaxialSort[]): fc.Arbitrary<Coaxial> =>
  fc.record({
    sort: fc.constantFrom(...sorts),
    name: fc.constantFrom("", "cut tube", "Long one"),
    outside: someFact(someLength),
    tolerance: fc.constant(null),
    inside: fc.record({
      takes: someFact(someLength),
      bores: fc.constant([]),
      endHole: someFact(fc.constantFrom("open" as const, "closed" as const)),
    }),
    length: someFact(someLength),
  });

it("any chain is told in two whole sentences, the pair of each verdict among its lines", () => {
  const around = coaxialSorts.filter((sort) => sort !== "wire");
  fc.assert(
    fc.property(
      someThing(coaxialSorts),
      fc.array(someThing(around), { minLength: 1, maxLength: 4 }),
      (first, rest) => {
        const chain = chainOf([first, ...rest], rows);
        const lines = chainLines(chain);
        expect(chain.pairs.map(reachLine)).toContain(lines?.byLength);
        for (const line of [lines?.bySize, lines?.byLength]) {
          expect(line).toMatch(
            /^(Passes by recorded sizes|Does not pass|Long enough|Too short|Doubt|Cannot tell): .+\.$/,
          );
          expect(line).not.toMatch(/safe|recommend|undefined|NaN|null/i);
        }
      },
    ),
  );
});
