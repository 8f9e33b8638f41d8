import { describe, expect, it } from "vitest";
import type { TubeInside } from "#shared/fit/inside.ts";
import { missingFor } from "#shared/fit/missing.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import { type PassageRows, wireOf } from "#shared/fit/passage.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { blank, bore, bores, inch, noRows, reported, rows, takes } from "#tests/factories/tube-inside.ts";

const wire = wireOf(confirmed(inch(0.035)));
const missing = (inside: TubeInside, by: PassageRows = rows) => missingFor({ goes: wire, inside, rows: by });

describe("what stands between a passage and an answer", () => {
  it("a tube that was measured in the shaft lacks its end hole, open or not known; a closed one has none to measure", () => {
    const shaft = bores(bore("shaft", 0.075));
    const endHole = [{ what: "bore", place: "end hole" }];
    expect(missing(shaft)).toEqual(endHole);
    expect(missing({ ...shaft, endHole: confirmed("open") })).toEqual(endHole);
    expect(missing({ ...shaft, endHole: confirmed("closed") })).toEqual([]);
  });

  it("a place that is listed and not measured is named once", () => {
    expect(
      missing(bores(bore("end hole", 0.05), bore("valve", unknownFact), bore("valve", unknownFact))),
    ).toEqual([{ what: "bore", place: "valve" }]);
  });

  it("a label that is all that is known asks for no row, though a place is listed", () => {
    const inside = { ...takes(0.038), bores: [bore("hub", unknownFact, null)] };
    expect(missing(inside, noRows)).toEqual([]);
    expect(passageBySize({ goes: wire, inside, rows: noRows })).toMatchObject({ verdict: "passes" });
  });

  it("a tolerance of its own needs no row for the bore", () => {
    const inside = bores(bore("end hole", 0.05, 0));
    expect(missing(inside, { ...rows, boreTolerance: undefined })).toEqual([]);
    expect(missing(inside, noRows)).toEqual([{ what: "clearance row" }, { what: "outside tolerance row" }]);
  });

  it("of an unknown size nothing is compared", () => {
    const inside = bores(bore("end hole", 0.05));
    expect(passageBySize({ goes: wireOf(unknownFact), inside, rows })).toEqual({
      verdict: "cannot tell",
      missing: [{ what: "outside" }],
      compared: [],
    });
  });
});

describe("why it is doubt", () => {
  const reasons = (inside: TubeInside) => {
    const answer = passageBySize({ goes: wire, inside, rows });
    return answer.verdict === "doubt" ? answer.reasons : answer.verdict;
  };

  it("is said by what it hangs on, and by nothing else", () => {
    expect(reasons({ ...blank, takes: reported(inch(0.038)) })).toEqual([
      { because: "certainty", of: "label", certainty: "reported" },
    ]);
    expect(reasons(bores(bore("end hole", 0.0365, 0.001)))).toEqual([{ because: "tolerance" }]);
  });
});
