import { describe, expect, it } from "vitest";
import { reasonInWords } from "#shared/record/tube/plan-reason.ts";
import { thingsOf } from "#shared/record/tube/plan-things.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { cm, F, mm } from "#tests/factories/coaxial.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";
import { blank, bore, inch, reported } from "#tests/factories/tube-inside.ts";

const drain = shelfType({
  name: "Drain 12 F",
  sort: "tube",
  outside: confirmed(F(12)),
  tolerance: mm(0.1),
  takes: confirmed(inch(0.038)),
  bores: [bore("shaft", 0.1)],
  endHole: confirmed("open"),
  length: confirmed(cm(25)),
});

describe("what is typed becomes what lies one in another", () => {
  it("nothing typed: a wire and a tube of which nothing is known, nothing beside them", () => {
    expect(thingsOf({})).toEqual({
      wire: {
        sort: "wire",
        name: "the wire",
        outside: unknownFact,
        tolerance: null,
        inside: blank,
        length: unknownFact,
      },
      toCome: {
        sort: "tube",
        name: "the tube to come",
        outside: unknownFact,
        tolerance: null,
        inside: blank,
        length: unknownFact,
      },
      stiffener: null,
      sheath: null,
    });
  });

  it("a size that is typed is an outside, and stands as sure as it was typed", () => {
    const { wire, toCome, stiffener } = thingsOf({
      wire: confirmed(inch(0.035)),
      wireLength: confirmed(cm(145)),
      size: reported(F(8)),
      stiffener: confirmed(F(5)),
    });
    expect(wire).toMatchObject({ outside: confirmed(inch(0.035)), length: confirmed(cm(145)) });
    expect(toCome).toMatchObject({ outside: reported(F(8)), inside: blank });
    expect(stiffener).toMatchObject({ sort: "stiffener", name: "the stiffener", outside: confirmed(F(5)) });
  });

  it("a type of the shelf brings all that is known of it", () => {
    const { toCome } = thingsOf({ size: drain });
    expect(toCome).toEqual({
      sort: "tube",
      name: "Drain 12 F",
      outside: confirmed(F(12)),
      tolerance: mm(0.1),
      inside: {
        takes: confirmed(inch(0.038)),
        takesDevice: unknownFact,
        bores: [bore("shaft", 0.1)],
        endHole: confirmed("open"),
      },
      length: confirmed(cm(25)),
    });
  });

  it("what is typed beside goes before the shelf, each fact by itself; unknown is typed too", () => {
    const beside = {
      takes: confirmed(inch(0.035)),
      bores: [bore("end hole", 0.036)],
      endHole: unknownFact,
      fullLength: confirmed(cm(40)),
    };
    const { toCome } = thingsOf({ size: drain, ...beside });
    expect(toCome).toMatchObject({
      name: "Drain 12 F",
      outside: confirmed(F(12)),
      length: confirmed(cm(40)),
    });
    expect(toCome.inside).toEqual({
      takes: confirmed(inch(0.035)),
      takesDevice: unknownFact,
      bores: [bore("end hole", 0.036)],
      endHole: unknownFact,
    });
    expect(thingsOf({ size: drain, takes: unknownFact }).toCome.inside).toMatchObject({
      takes: unknownFact,
      bores: [bore("shaft", 0.1)],
      endHole: confirmed("open"),
    });
    const long = shelfType({ length: confirmed(cm(180)) });
    expect(thingsOf({ wire: long }).wire.length).toEqual(confirmed(cm(180)));
    expect(thingsOf({ wire: long, wireLength: confirmed(cm(145)) }).wire.length).toEqual(confirmed(cm(145)));
  });
});

describe("a sheath", () => {
  it("is sized by its inside: what is typed is no outside", () => {
    expect(thingsOf({ sheath: confirmed(mm(4.2)), sheathLength: confirmed(cm(23)) }).sheath).toEqual({
      sort: "sheath",
      name: "the sheath",
      outside: unknownFact,
      tolerance: null,
      inside: { ...blank, bores: [{ place: "end hole", inside: confirmed(mm(4.2)), tolerance: null }] },
      length: confirmed(cm(23)),
    });
    expect(thingsOf({ sheath: reported(mm(4.2)) }).sheath).toMatchObject({
      inside: { bores: [{ inside: reported(mm(4.2)) }] },
      length: unknownFact,
    });
  });

  it("of the shelf is as the shelf has it, but for a length that is typed", () => {
    const sheath = shelfType({
      name: "Sheath 14",
      sort: "sheath",
      outside: confirmed(F(16)),
      takesDevice: confirmed(F(14)),
      length: confirmed(cm(20)),
    });
    expect(thingsOf({ sheath }).sheath).toMatchObject({
      name: "Sheath 14",
      outside: confirmed(F(16)),
      inside: { takesDevice: confirmed(F(14)), bores: [] },
      length: confirmed(cm(20)),
    });
    expect(thingsOf({ sheath, sheathLength: confirmed(cm(23)) }).sheath?.length).toEqual(confirmed(cm(23)));
  });
});

describe("the reason, by one key", () => {
  const offered = ["the operator goes on", "another wire is at hand"];
  it.each([
    ["1", "the operator goes on"],
    ["2", "another wire is at hand"],
    // A key that offers nothing, and words, stand as typed.
    ["3", "3"],
    ["0", "0"],
    ["12", "12"],
    ["agreed at the meeting", "agreed at the meeting"],
    [null, null],
  ])("%j is %j", (typed, words) => {
    expect(reasonInWords(typed, offered)).toBe(words);
  });

  it("is as typed where nothing is on offer", () => {
    expect(reasonInWords("1", [])).toBe("1");
  });
});
