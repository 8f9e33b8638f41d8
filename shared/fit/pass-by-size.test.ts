import { describe, expect, it } from "vitest";
import type { Bore, Place, TubeInside } from "#shared/fit/inside.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import type { BySize, PassageRows } from "#shared/fit/passage.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";

const inch = (figure: number): Length => lengthOf(figure, "in");
const reported = <T>(value: T): Fact<T> => ({ certainty: "reported", value });
const estimated = <T>(value: T): Fact<T> => ({ certainty: "estimated", value });

const nothing: TubeInside = { takes: unknownFact, bores: [], endHole: unknownFact };
const noRows: PassageRows = { clearance: undefined, boreTolerance: undefined };
const noClearance: PassageRows = { clearance: inch(0), boreTolerance: undefined };
const rows: PassageRows = { clearance: inch(0.001), boreTolerance: inch(0.002) };

const bore = (place: Place, inside: number | Fact<Length>, tolerance: number | null = 0): Bore => ({
  place,
  inside: typeof inside === "number" ? confirmed(inch(inside)) : inside,
  tolerance: tolerance === null ? null : inch(tolerance),
});

const takes = (figure: number): TubeInside => ({ ...nothing, takes: confirmed(inch(figure)) });
const bores = (...list: Bore[]): TubeInside => ({ ...nothing, bores: list });
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
    ["nothing recorded", wire35, nothing, rows, "cannot tell: takes or bores"],
    [
      "end hole open, nothing measured",
      wire35,
      { ...nothing, endHole: confirmed("open") },
      rows,
      "cannot tell: takes or bores",
    ],
    ["closed tip, labelled", wire35, { ...takes(0.038), ...closed }, rows, "does not pass: closed end hole"],
    ["closed tip, nothing else", wire35, { ...nothing, ...closed }, rows, "does not pass: closed end hole"],
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
    [
      "reported label, would pass",
      wire35,
      { ...nothing, takes: reported(inch(0.038)) },
      rows,
      "doubt: label",
    ],
    [
      "reported label, would stop",
      wire38,
      { ...nothing, takes: reported(inch(0.035)) },
      rows,
      "doubt: label",
    ],
    ["estimated bore", wire38, bores(bore("end hole", estimated(inch(0.03)))), rows, "doubt: end hole"],
    ["estimated wire", estimated(inch(0.035)), takes(0.038), rows, "doubt: label"],
    [
      "reported label would pass, confirmed bore stops",
      wire38,
      { ...bores(bore("hub", 0.03)), takes: reported(inch(0.038)) },
      rows,
      "does not pass: hub",
    ],
    ["wire unknown", unknownFact, takes(0.038), rows, "cannot tell: wire size"],
    ["all unknown", unknownFact, nothing, rows, "cannot tell: wire size, takes or bores"],
    ["no clearance row", wire35, bores(bore("end hole", 0.05)), noRows, "cannot tell: clearance row"],
    [
      "no clearance row, a label that passes beside a bore",
      wire35,
      { ...takes(0.038), bores: [bore("end hole", 0.05)] },
      noRows,
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
      "no tolerance anywhere",
      wire35,
      bores(bore("end hole", 0.05, null)),
      noClearance,
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
    expect(brief(passageBySize({ wire, inside, rows: row }))).toBe(expected);
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
    expect(at.map((wire) => passageBySize({ wire, inside, rows }).verdict)).toEqual(verdicts);
  });
});

describe("what stands beside the verdict", () => {
  it("a bore: by how much too thick, tolerance and clearance as used", () => {
    const inside = bores(bore("end hole", 0.035, null));
    expect(passageBySize({ wire: confirmed(inch(0.039)), inside, rows })).toEqual({
      verdict: "does not pass",
      wire: inch(0.039),
      decides: {
        basis: "bore",
        place: "end hole",
        certainty: "confirmed",
        says: "does not pass",
        inside: inch(0.035),
        tolerance: inch(0.002),
        toleranceFrom: "row",
        clearance: inch(0.001),
        limits: { least: inch(0.032), most: inch(0.036) },
        gap: { is: "too thick", by: inch(0.004) },
      },
      compared: [expect.objectContaining({ place: "end hole" })],
    });
  });

  it("a recorded tolerance goes before the row's, and nought is one", () => {
    const inside = bores(bore("end hole", 0.04, 0));
    expect(passageBySize({ wire: wire35, inside, rows })).toMatchObject({
      decides: { tolerance: 0, toleranceFrom: "recorded", gap: { is: "room", by: inch(0.005) } },
    });
  });

  it("doubt gives every reason", () => {
    const inside = bores(bore("end hole", estimated(inch(0.036)), 0.001));
    const wire = reported(inch(0.035));
    expect(passageBySize({ wire, inside, rows })).toMatchObject({
      verdict: "doubt",
      reasons: [
        { because: "tolerance" },
        { because: "certainty", of: "wire", certainty: "reported" },
        { because: "certainty", of: "bore", certainty: "estimated" },
      ],
    });
  });

  it("compares from the hub to the tip, the label last, in whatever order they were recorded", () => {
    const list = [bore("end hole", 0.05), bore("stopcock", 0.06), bore("shaft", 0.07), bore("hub", 0.08)];
    const inside = { takes: confirmed(inch(0.038)), bores: list, ...closed };
    const { compared } = passageBySize({ wire: wire35, inside, rows });
    expect(compared.map((each) => (each.basis === "bore" ? each.place : each.basis))).toEqual([
      "stopcock",
      "hub",
      "shaft",
      "end hole",
      "closed end hole",
      "label",
    ]);
    const turned = { ...inside, bores: list.toReversed() };
    expect(passageBySize({ wire: wire35, inside: turned, rows })).toEqual(
      passageBySize({ wire: wire35, inside, rows }),
    );
  });

  it("a tolerance wider than the bore leaves no opening below nothing", () => {
    const inside = bores(bore("end hole", 0.02, 0.03));
    expect(passageBySize({ wire: wire35, inside, rows })).toMatchObject({
      verdict: "doubt",
      decides: { limits: { least: 0, most: inch(0.049) } },
    });
  });
});
