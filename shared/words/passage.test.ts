import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Bore, stateConcerns, type TubeInside } from "#shared/fit/inside.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import { type PassageRows, wireOf } from "#shared/fit/passage.ts";
import { passageByState } from "#shared/fit/wire-passage.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";
import { sizeGrounds, sizeLine, stateLine } from "#shared/words/passage.ts";
import {
  blank,
  bore,
  bores,
  estimated,
  inch,
  noRows,
  reported,
  rows,
  somePassage,
  takes,
} from "#tests/factories/tube-inside.ts";

const none: PassageRows = { ...rows, clearance: inch(0), boreTolerance: inch(0) };
const wire = (figure: number) => confirmed(inch(figure));

describe("by size", () => {
  it.each<[Fact<Length>, TubeInside, PassageRows, string]>([
    [
      wire(0.038),
      bores(bore("end hole", 0.035)),
      rows,
      "Does not pass: at the end hole the wire is 0.003 in (0.076 mm) too thick.",
    ],
    [wire(0.038), takes(0.035), rows, "Does not pass: labelled for 0.035 in; the wire is 0.038 in."],
    [
      wire(0.035),
      takes(0.038),
      rows,
      "Passes by recorded sizes: labelled for 0.038 in; the wire is 0.035 in.",
    ],
    [
      wire(0.035),
      bores(bore("end hole", 0.038)),
      rows,
      "Passes by recorded sizes: at the end hole the wire has 0.003 in (0.076 mm) of room.",
    ],
    [
      wire(0.035),
      bores(bore("end hole", 0.035)),
      none,
      "Passes by recorded sizes: at the end hole the wire has no room to spare.",
    ],
    [
      wire(0.035),
      bores(bore("hub", 0.0355), bore("end hole", 0.05)),
      rows,
      "Does not pass: at the hub the wire has 0.0005 in (0.013 mm) of room; the clinic's row asks for 0.001 in (0.025 mm).",
    ],
    [
      wire(0.035),
      bores(bore("valve", 0.036, 0.002), bore("end hole", 0.05)),
      rows,
      "Doubt: at the valve the tolerance leaves it open, from 0.002 in (0.051 mm) too thick to 0.002 in (0.051 mm) of room.",
    ],
    [
      wire(0.038),
      { ...blank, takes: reported(inch(0.035)) },
      rows,
      "Doubt: labelled for 0.035 in; the wire is 0.038 in. What the label says is reported, not confirmed.",
    ],
    [
      estimated(inch(0.035)),
      bores(bore("end hole", 0.05)),
      rows,
      "Doubt: at the end hole the wire has 0.015 in (0.381 mm) of room. The wire's size is estimated, not confirmed.",
    ],
    [
      wire(0.035),
      { ...takes(0.038), endHole: confirmed("closed") },
      rows,
      "Does not pass: the end hole is closed, so no wire comes out of the tip.",
    ],
    [wire(0.035), blank, rows, "Cannot tell: record what wire the tube takes, or its bores."],
    [
      wire(0.035),
      bores(bore("shaft", 0.05)),
      rows,
      "Cannot tell: record what wire the tube takes, or its inside at the end hole.",
    ],
    [
      unknownFact,
      blank,
      rows,
      "Cannot tell: record the size of the wire; and what wire the tube takes, or its bores.",
    ],
    [
      wire(0.035),
      bores(bore("end hole", 0.05, null)),
      noRows,
      "Cannot tell: the clinic's protocol has no row for the clearance of a wire in a measured bore, the tolerance of a bore given without one and the tolerance of the outside of a wire.",
    ],
  ])("case %#", (size, inside, row, line) => {
    expect(sizeLine(passageBySize({ goes: wireOf(size), inside, rows: row }))).toBe(line);
  });

  it("lays the arithmetic open, and says that label and bore disagree", () => {
    const inside = { ...takes(0.038), bores: [bore("end hole", 0.035, null)] };
    expect(sizeGrounds(passageBySize({ goes: wireOf(wire(0.038)), inside, rows }))).toEqual([
      "The end hole: inside 0.035 in (0.889 mm), confirmed; tolerance 0.002 in (0.051 mm) (the clinic's row); clearance 0.001 in (0.025 mm).",
      "Label: takes up to 0.038 in (0.965 mm), confirmed.",
      "Label and inside disagree: the worse is shown.",
    ]);
  });

  it.each<[string, number, Bore[], boolean]>([
    ["label stops, hub alone passes: the tip is not measured", 0.035, [bore("hub", 0.05)], false],
    ["label stops, end hole passes", 0.035, [bore("end hole", 0.05)], true],
    ["label passes, shaft stops", 0.04, [bore("shaft", 0.03)], true],
    ["both pass", 0.04, [bore("end hole", 0.05)], false],
    ["both stop", 0.035, [bore("hub", 0.05), bore("end hole", 0.035)], false],
  ])("disagreement: %s", (_name, label, list, disagree) => {
    const answer = passageBySize({
      goes: wireOf(wire(0.038)),
      inside: { ...takes(label), bores: list },
      rows,
    });
    expect(sizeGrounds(answer).includes("Label and inside disagree: the worse is shown.")).toBe(disagree);
  });
});

describe("by state", () => {
  it("names what is recorded", () => {
    expect(stateLine(passageByState(["crusted"]))).toBe("In doubt by state: crusted.");
    expect(stateLine(passageByState(stateConcerns))).toBe(
      "In doubt by state: crusted, hard to flush, past its latest date, string knotted or retained, the last exchange was difficult.",
    );
    expect(stateLine(passageByState([]))).toBe("State: nothing recorded.");
    expect(stateLine(passageByState(undefined))).toBe("State: not recorded.");
  });
});

describe("any passage", () => {
  it("is told in whole sentences, never as harmless, never without its unit", () => {
    fc.assert(
      fc.property(somePassage, (of) => {
        const answer = passageBySize(of);
        for (const line of [sizeLine(answer), ...sizeGrounds(answer)]) {
          expect(line).toMatch(/^[A-Z].*\.$/);
          expect(line).not.toMatch(/safe|recommend|OK|normal|undefined|NaN|-\d|\bnull\b/i);
          expect(line.replace(/\d+(\.\d+)? (in|mm)\b/g, "")).not.toMatch(/\d/);
        }
      }),
    );
  });
});
