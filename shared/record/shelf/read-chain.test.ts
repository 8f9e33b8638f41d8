import { describe, expect, it } from "vitest";
import type { RefusalCode } from "#shared/errors/codes.ts";
import type { CoaxialSort } from "#shared/fit/coaxial.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { readChain, type TypedThing } from "#shared/record/shelf/read-chain.ts";
import { coaxialOf } from "#shared/shelf/coaxial-of.ts";
import { typeTexts } from "#shared/shelf/type-texts.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { gaugeOutside } from "#shared/size/gauge.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";

const row = (sort: CoaxialSort, texts: Texts = {}): TypedThing => ({ sort, texts });
const toMend = (...rows: TypedThing[]) => {
  const read = readChain(rows);
  return read.ok ? [] : read.refusals.map((each) => each.map(({ code, field }) => `${field}: ${code}`));
};

describe("what is typed of one thing", () => {
  it("is blank, and then unknown", () => {
    const read = readChain([row("tube")]);
    expect(read).toEqual({
      ok: true,
      things: [
        {
          sort: "tube",
          name: "",
          outside: unknownFact,
          tolerance: null,
          inside: { takes: unknownFact, takesDevice: unknownFact, bores: [], endHole: unknownFact },
          length: unknownFact,
        },
      ],
    });
  });

  it("is read by the readers of every form", () => {
    const read = readChain([
      row("sheath", {
        name: "peel-away",
        outside: "~14 f",
        length: "12",
        takes: ".038 in",
        takesDevice: "12 f",
        bores: "valve 4.1 mm ±0.05 mm",
        endHole: "open",
        tolerance: "0.1 mm",
      }),
    ]);
    expect(read.ok && read.things[0]).toMatchObject({
      name: "peel-away",
      outside: { certainty: "estimated", value: lengthOf(14, "F") },
      tolerance: lengthOf(0.1, "mm"),
      inside: {
        takes: confirmed(lengthOf(0.038, "in")),
        takesDevice: confirmed(lengthOf(12, "F")),
        bores: [{ place: "valve", inside: confirmed(lengthOf(4.1, "mm")), tolerance: lengthOf(0.05, "mm") }],
        endHole: confirmed("open"),
      },
      length: confirmed(lengthOf(12, "cm")),
    });
  });

  it("takes a needle's outside by its gauge, and nothing of its inside from it", () => {
    const read = readChain([row("needle", { outside: "19 g" })]);
    expect(read.ok && read.things[0]).toMatchObject({
      outside: confirmed(gaugeOutside[19]),
      inside: { takes: unknownFact, bores: [] },
    });
  });

  it("takes what others told as reported", () => {
    const read = readChain([row("tube", { outside: "8 f", bores: "shaft 2 mm", certainty: "reported" })]);
    expect(read.ok && read.things[0]).toMatchObject({
      outside: { certainty: "reported" },
      inside: { bores: [{ inside: { certainty: "reported" } }] },
    });
  });

  it("is a type of the shelf, typed as its form would hold it", () => {
    const type = shelfType({
      outside: confirmed(lengthOf(0.038, "in")),
      length: confirmed(lengthOf(145, "cm")),
    });
    expect(readChain([row("wire", typeTexts(type))])).toEqual({ ok: true, things: [coaxialOf(type)] });
  });

  it("allows a wire that is longer than any on a shelf", () => {
    expect(toMend(row("wire", { outside: ".035 in", length: "450" }))).toEqual([]);
  });
});

describe("what is to mend stands by its field", () => {
  it.each<[CoaxialSort, Texts, string, RefusalCode]>([
    ["wire", { outside: "0.35 in" }, "outside", "length-absurd"],
    ["wire", { outside: "3 F" }, "outside", "length-unit-unfit"],
    ["wire", { length: "29.9" }, "length", "length-absurd"],
    ["wire", { takes: ".035 in" }, "takes", "wire-has-no-inside"],
    ["wire", { endHole: "open" }, "endHole", "wire-has-no-inside"],
    ["tube", { outside: "80 F" }, "outside", "length-absurd"],
    ["tube", { outside: "8" }, "outside", "length-needs-unit"],
    ["tube", { outside: "-8 f" }, "outside", "length-not-positive"],
    ["tube", { outside: "0 f" }, "outside", "length-not-positive"],
    ["tube", { outside: "8 f 2.7 mm" }, "outside", "length-not-understood"],
    ["tube", { outside: "21 g" }, "outside", "length-unit-unfit"],
    ["tube", { outside: "1,500" }, "outside", "length-comma-unclear"],
    ["tube", { takes: "3 F" }, "takes", "length-unit-unfit"],
    ["tube", { bores: "shaft 6 F" }, "bores", "length-unit-unfit"],
    ["tube", { bores: "elbow 2 mm" }, "bores", "word-unknown"],
    ["tube", { tolerance: "2 mm" }, "tolerance", "length-absurd"],
    ["needle", { outside: "17 g" }, "outside", "gauge-not-listed"],
    ["needle", { outside: "21" }, "outside", "length-needs-unit"],
  ])("%s %o", (sort, texts, field, code) => {
    expect(toMend(row(sort, texts))).toEqual([[`${field}: ${code}`]]);
  });

  // 8 F is 2.6667 mm outside (ISO 20696:2018, 5.5.2 note).
  it.each<[Texts, string[]]>([
    [{ bores: "shaft 2.66 mm, end hole 2.66 mm" }, []],
    [{ bores: "shaft 2.67 mm" }, ["bores: inside-wider-than-outside"]],
    [{ bores: "end hole 2.67 mm" }, ["bores: inside-wider-than-outside"]],
    [{ bores: "hub 4.2 mm, valve 3 mm, stopcock 3 mm" }, []],
    [{ takesDevice: "8 f" }, []],
    [{ takesDevice: "8.1 f" }, ["takesDevice: inside-wider-than-outside"]],
    [{ outside: "?", takesDevice: "8.1 f" }, []],
  ])("an inside in an outside of 8 F: %o", (texts, mend) => {
    expect(toMend(row("tube", { outside: "8 f", ...texts })).flat()).toEqual(mend);
  });

  it("says which inside and which outside", () => {
    const read = readChain([row("tube", { outside: "8 f", bores: "shaft 2.8 mm" })]);
    expect(read.ok ? [] : read.refusals.flat().map(refusalSentence)).toEqual([
      "The inside (shaft 2.8 mm) is wider than the outside (8 F): check both.",
    ]);
  });

  it("a wire lies innermost or nowhere", () => {
    expect(toMend(row("wire"), row("tube"))).toEqual([]);
    expect(toMend(row("tube"), row("wire"), row("sheath", { outside: "8" }))).toEqual([
      [],
      ["sort: wire-not-innermost"],
      ["outside: length-needs-unit"],
    ]);
  });
});
