import fc from "fast-check";
import { expect, it } from "vitest";
import type { Coaxial } from "#shared/fit/coaxial.ts";
import { whichPass } from "#shared/fit/which-pass.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { coaxial, exampleRows } from "#tests/factories/coaxial.ts";
import { blank, inch, reported, takes } from "#tests/factories/tube-inside.ts";

const wire = (name: string, outside: Coaxial["outside"]): Coaxial => ({ ...coaxial("wire"), name, outside });
const sized = (name: string, figure: number): Coaxial => wire(name, confirmed(inch(figure)));

/** "Stiff: passes, 0": name, verdict, and the thing that gave it. */
const told = (answers: ReturnType<typeof whichPass<Coaxial>>): string[] =>
  answers.map(({ type, verdict, through }) => `${type.name}: ${verdict}, ${through}`);

it("by label 0.038 and 0.035: what passes both first, the thickest of them first, each with the tube that decides", () => {
  const ours = [
    sized("thick", 0.038),
    sized("thin", 0.018),
    wire("unmarked", unknownFact),
    wire("told of", reported(inch(0.025))),
    sized("usual", 0.035),
  ];
  expect(told(whichPass(ours, [takes(0.038), takes(0.035)], exampleRows))).toEqual([
    "usual: passes, 0",
    "thin: passes, 0",
    "told of: doubt, 0",
    "unmarked: cannot tell, 0",
    // 0.038 goes through the first, labelled up to and including, and not through the second.
    "thick: does not pass, 1",
  ]);
});

it("doubt is worse than passing, cannot tell worse than doubt, a stop the worst; the first of the worst is shown", () => {
  const told38 = { ...blank, takes: reported(inch(0.038)) };
  const one = (insides: Parameters<typeof whichPass>[1]) =>
    told(whichPass([sized("usual", 0.035)], insides, exampleRows));
  expect(one([takes(0.038), told38])).toEqual(["usual: doubt, 1"]);
  expect(one([told38, blank])).toEqual(["usual: cannot tell, 1"]);
  expect(one([blank, takes(0.018)])).toEqual(["usual: does not pass, 1"]);
  expect(one([takes(0.018), blank])).toEqual(["usual: does not pass, 0"]);
  expect(one([takes(0.038), takes(0.038)])).toEqual(["usual: passes, 0"]);
});

it("of one size they stand by name, in whatever order they were put on the shelf; of unknown size last", () => {
  const ours = ["b", "c", "a"].map((name) => sized(name, 0.035));
  const unknown = ["z", "A"].map((name) => wire(name, unknownFact));
  const labelled = [takes(0.038)];
  expect(told(whichPass([...ours, ...unknown], labelled, exampleRows))).toEqual([
    "a: passes, 0",
    "b: passes, 0",
    "c: passes, 0",
    "A: cannot tell, 0",
    "z: cannot tell, 0",
  ]);
  // Through what nobody knows all is cannot tell, and an unknown size stands behind the known ones.
  expect(whichPass([...unknown, ...ours], [blank], exampleRows).map(({ type }) => type.name)).toEqual([
    ..."abcAz",
  ]);
});

it("two of one name keep their order", () => {
  const [first, second] = [sized("same", 0.035), sized("same", 0.035)];
  const answers = whichPass([first, second], [takes(0.038)], exampleRows);
  expect(answers[0]?.type).toBe(first);
  expect(answers[1]?.type).toBe(second);
});

it("has no answer where there is nothing to go through, and none without a shelf", () => {
  expect(whichPass([sized("usual", 0.035)], [], exampleRows)).toEqual([]);
  expect(whichPass([], [takes(0.038)], exampleRows)).toEqual([]);
});

it("carries what the deciding thing says", () => {
  const [answer] = whichPass([sized("usual", 0.035)], [takes(0.038), takes(0.018)], exampleRows);
  expect(answer?.bySize).toMatchObject({ verdict: "does not pass", decides: { basis: "label" } });
});

it("law: the order of the shelf changes nothing", () => {
  const size = fc.constantFrom(0.014, 0.018, 0.035, 0.038, 0.039);
  const ours = fc.uniqueArray(fc.tuple(fc.string(), size), { selector: ([name]) => name });
  fc.assert(
    fc.property(ours, (list) => {
      const types = list.map(([name, figure]) => sized(name, figure));
      const insides = [takes(0.038), takes(0.035)];
      expect(told(whichPass(types.toReversed(), insides, exampleRows))).toEqual(
        told(whichPass(types, insides, exampleRows)),
      );
    }),
  );
});
