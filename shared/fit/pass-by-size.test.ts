import { describe, expect, it } from "vitest";
import type { TubeInside } from "#shared/fit/inside.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import { type BySize, type PassageRows, wireOf } from "#shared/fit/passage.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";
import {
  blank,
  bore,
  bores,
  estimated,
  inch,
  noRows,
  reported,
  rows,
  takes,
} from "#tests/factories/tube-inside.ts";

const noTolerance: PassageRows = { ...rows, clearance: inch(0), boreTolerance: undefined };
const closed: Pick<TubeInside, "endHole"> = { endHole: confirmed("closed") };

/** The verdict and what decides, in one line. */
function brief(answer: BySize): string {
  if (answer.verdict === "cannot tell") {
    const missing = answer.missing.map((each) => (each.what === "bore" ? each.place : each.what));
    return `cannot tell: ${missing.join(", ")}`;
  }
  const { decides } = answer;
  return `${answer.verdict}: ${decides.basis === "bore" ? decides.place : decides.basis}`;
}

const wire35 = confirmed(inch(0.035));
const wire38 = confirmed(inch(0.038));

describe("hand-worked passages", () => {
  it.each<[string, Fact<Length>, TubeInside, PassageRows, string]>([
    ["0.035 labelled for 0.038", wire35, takes(0.038), rows, "passes: label"],
    ["0.035 labelled for 0.035: up to and including", wire35, takes(0.035), rows, "passes: label"],
    ["0.038 labelled for 0.035", wire38, takes(0.035), rows, "does not pass: label"],
    ["0.018 labelled for 0.018, no rows", confirmed(inch(0.018)), takes(0.018), noRows, "passes: label"],
    ["0.889 mm is 0.035 in", confirmed(lengthOf(0.889, "mm")), takes(0.035), noRows, "passes: label"],
    ["0.89 mm is not", confirmed(lengthOf(0.89, "mm")), takes(0.035), noRows, "does not pass: label"],
    ["0.038, end hole 0.035", wire38, bores(bore("end hole", 0.035)), rows, "does not pass: end hole"],
    ["0.035, end hole 0.036", wire35, bores(bore("end hole", 0.036)), rows, "passes: end hole"],
    [
      "0.035, end hole 0.0355: less than the clearance",
      wire35,
      bores(bore("end hole", 0.0355)),
      rows,
      "does not pass: end hole",
    ],
    [
      "0.035, end hole 0.0365 +- 0.001: between",
      wire35,
      bores(bore("end hole", 0.0365, 0.001)),
      rows,
      "doubt: end hole",
    ],
    [
      "0.035, end hole 0.0365, the row's 0.002",
      wire35,
      bores(bore("end hole", 0.0365, null)),
      rows,
      "doubt: end hole",
    ],
    [
      "wide shaft, narrow hub",
      wire38,
      bores(bore("end hole", 0.04), bore("shaft", 0.075), bore("hub", 0.037)),
      rows,
      "does not pass: hub",
    ],
    [
      "the narrowest of those that pass",
      wire35,
      bores(bore("hub", 0.08), bore("shaft", 0.075), bore("end hole", 0.04)),
      rows,
      "passes: end hole",
    ],
    [
      "the narrowest of those that stop",
      wire38,
      bores(bore("hub", 0.036), bore("end hole", 0.03)),
      rows,
      "does not pass: end hole",
    ],
    ["only the shaft is measured", wire35, bores(bore("shaft", 0.075)), rows, "cannot tell: end hole"],
    [
      "only the shaft is measured, and stops it",
      wire38,
      bores(bore("shaft", 0.03)),
      rows,
      "does not pass: shaft",
    ],
    [
      "a valve is there, not measured",
      wire35,
      bores(bore("valve", unknownFact), bore("end hole", 0.04)),
      rows,
      "cannot tell: valve",
    ],
    [
      "the same, labelled: the label stands for the path",
      wire35,
      { ...bores(bore("valve", unknownFact), bore("end hole", 0.04)), takes: confirmed(inch(0.038)) },
      rows,
      "passes: label",
    ],
    ["nothing recorded", wire35, blank, rows, "cannot tell: takes or bores"],
    [
      "end hole open, nothing measured",
      wire35,
      { ...blank, endHole: confirmed("open") },
      rows,
      "cannot tell: takes or bores",
    ],
    ["closed tip, labelled", wire35, { ...takes(0.038), ...closed }, rows, "does not pass: closed end hole"],
    ["closed tip, nothing else", wire35, { ...blank, ...closed }, rows, "does not pass: closed end hole"],
    [
      "closed tip, told by another hospital",
      wire35,
      { ...takes(0.038), endHole: reported("closed") },
      rows,
      "doubt: closed end hole",
    ],
    [
      "label passes, bore stops",
      wire38,
      { ...takes(0.038), bores: [bore("end hole", 0.035)] },
      rows,
      "does not pass: end hole",
    ],
    [
      "bore passes, label stops",
      wire38,
      { ...takes(0.035), bores: [bore("end hole", 0.045)] },
      rows,
      "does not pass: label",
    ],
    [
      "label passes, bore in doubt",
      wire38,
      { ...takes(0.038), bores: [bore("end hole", 0.039, 0.001)] },
      rows,
      "doubt: end hole",
    ],
    ["reported label, would pass", wire35, { ...blank, takes: reported(inch(0.038)) }, rows, "doubt: label"],
    ["reported label, would stop", wire38, { ...blank, takes: reported(inch(0.035)) }, rows, "doubt: label"],
    ["estimated bore", wire38, bores(bore("end hole", estimated(inch(0.03)))), rows, "doubt: end hole"],
    ["estimated wire", estimated(inch(0.035)), takes(0.038), rows, "doubt: label"],
    [
      "reported label would pass, confirmed bore stops",
      wire38,
      { ...bores(bore("hub", 0.03)), takes: reported(inch(0.038)) },
      rows,
      "does not pass: hub",
    ],
    [
      "reported closed, no label: a closed tip has no bore to record",
      wire35,
      { ...bores(bore("shaft", 0.075)), endHole: reported("closed") },
      rows,
      "doubt: closed end hole",
    ],
    [
      "two stops: the one narrower at its best decides",
      wire38,
      bores(bore("hub", 0.033, 0.002), bore("end hole", 0.032, 0.0005)),
      rows,
      "does not pass: end hole",
    ],
    [
      "two in doubt: the one narrower at its worst decides",
      wire35,
      bores(bore("hub", 0.0365, 0.001), bore("end hole", 0.0365, 0.0015)),
      rows,
      "doubt: end hole",
    ],
    [
      "label and end hole both stop: the place decides, since it says where",
      wire38,
      { ...takes(0.035), bores: [bore("hub", 0.08), bore("end hole", 0.0355, 0.002)] },
      rows,
      "does not pass: end hole",
    ],
    ["wire unknown", unknownFact, takes(0.038), rows, "cannot tell: outside"],
    ["all unknown", unknownFact, blank, rows, "cannot tell: outside, takes or bores"],
    [
      "no clearance row",
      wire35,
      bores(bore("end hole", 0.05)),
      { ...rows, clearance: undefined },
      "cannot tell: clearance row",
    ],
    [
      "no clearance row, a label that passes beside a bore",
      wire35,
      { ...takes(0.038), bores: [bore("end hole", 0.05)] },
      { ...rows, clearance: undefined },
      "cannot tell: clearance row",
    ],
    [
      "no clearance row, a label that stops",
      wire38,
      { ...takes(0.035), bores: [bore("end hole", 0.05)] },
      noRows,
      "does not pass: label",
    ],
    [
      "no rows at all",
      wire35,
      bores(bore("end hole", 0.05, null)),
      noRows,
      "cannot tell: clearance row, tolerance row, outside tolerance row",
    ],
    [
      "no tolerance anywhere",
      wire35,
      bores(bore("end hole", 0.05, null)),
      noTolerance,
      "cannot tell: tolerance row",
    ],
    [
      "bores listed, none measured",
      wire35,
      bores(bore("hub", unknownFact), bore("end hole", unknownFact)),
      rows,
      "cannot tell: takes or bores",
    ],
  ])("%s", (_name, wire, inside, row, expected) => {
    expect(brief(passageBySize({ goes: wireOf(wire), inside, rows: row }))).toBe(expected);
  });
});

describe("one unit below, at and above 0.035 in", () => {
  it.each<[string, TubeInside, [string, string, string]]>([
    ["the label", takes(0.035), ["passes", "passes", "does not pass"]],
    ["a bore less its clearance", bores(bore("end hole", 0.036)), ["passes", "passes", "does not pass"]],
    [
      "a place before the tip",
      bores(bore("hub", 0.036), bore("end hole", 0.05)),
      ["passes", "passes", "does not pass"],
    ],
    ["the worst of a tolerance", bores(bore("end hole", 0.038, 0.002)), ["passes", "passes", "doubt"]],
    ["the best of a tolerance", bores(bore("end hole", 0.034, 0.002)), ["doubt", "doubt", "does not pass"]],
    ["the row's tolerance", bores(bore("end hole", 0.038, null)), ["passes", "passes", "doubt"]],
  ])("%s", (_name, inside, verdicts) => {
    const at = [-1, 0, 1].map((units) => confirmed((inch(0.035) + units) as Length));
    expect(at.map((wire) => passageBySize({ goes: wireOf(wire), inside, rows }).verdict)).toEqual(verdicts);
  });
});
