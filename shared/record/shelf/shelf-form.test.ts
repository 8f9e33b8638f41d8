import { describe, expect, it } from "vitest";
import { readField, type Texts } from "#shared/record/field-spec.ts";
import { shelfForm } from "#shared/record/shelf/shelf-form.ts";
import { typeTexts } from "#shared/shelf/type-texts.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { gaugeOutside } from "#shared/size/gauge.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";

const none = { shelf: [], changes: null };
const fields = shelfForm.fields(none);

const read = (texts: Texts) => {
  const result = shelfForm.read(texts, none);
  if (!result.ok) throw new Error(result.refusals.map(refusalSentence).join("; "));
  return result.entry;
};
const refused = (texts: Texts) => {
  const result = shelfForm.read(texts, none);
  return result.ok ? [] : result.refusals.map((refusal) => `${refusal.field}: ${refusalSentence(refusal)}`);
};

const tube = { sort: "tube", name: "Drain 8", outside: "8 f" };
const wire = { sort: "wire", name: "Standard", outside: ".035 in" };
const reported = { certainty: "reported" } as const;

const whole: Texts = {
  ...tube,
  takes: ".038 in",
  takesDevice: "3 f",
  bores: "hub 2.0 mm, shaft 1.9 mm +- 0.05 mm, end hole ~.040 in, valve ?",
  endHole: "open",
  length: "~25",
  retention: "pigtail",
  kinds: "abscess drain, pcn",
  tolerance: "0.05 mm",
};

describe("a type of the shelf as it is typed", () => {
  it("is every fact that was said, and unknown where none was", () => {
    expect(read(whole)).toEqual({
      sort: "tube",
      name: "Drain 8",
      kinds: ["abscess drain", "nephrostomy"],
      outside: confirmed(lengthOf(8, "F")),
      tolerance: lengthOf(0.05, "mm"),
      takes: confirmed(lengthOf(0.038, "in")),
      takesDevice: confirmed(lengthOf(3, "F")),
      bores: [
        { place: "hub", inside: confirmed(lengthOf(2, "mm")), tolerance: null },
        { place: "valve", inside: unknownFact, tolerance: null },
        { place: "shaft", inside: confirmed(lengthOf(1.9, "mm")), tolerance: lengthOf(0.05, "mm") },
        {
          place: "end hole",
          inside: { certainty: "estimated", value: lengthOf(0.04, "in") },
          tolerance: null,
        },
      ],
      endHole: confirmed("open"),
      length: { certainty: "estimated", value: lengthOf(25, "cm") },
      retention: confirmed("locking loop"),
    });
    const { id: _id, ...bare } = shelfType({ name: "Standard" });
    expect(read(wire)).toEqual(bare);
  });

  it("is reported in all that is not estimated where others told it", () => {
    const told = read({ ...whole, certainty: "reported" });
    expect(told.outside).toMatchObject(reported);
    expect(told.endHole).toMatchObject(reported);
    expect(told.bores.map(({ inside }) => inside.certainty)).toEqual([
      "reported",
      "unknown",
      "reported",
      "estimated",
    ]);
  });

  it.each([
    ["all that can be said of a tube", whole],
    ["the same told by others", { ...whole, certainty: "reported" }],
    ["a wire", { ...wire, outside: "0.9 mm", length: "260", tolerance: "0.0005 in" }],
    ["a needle by its gauge", { sort: "needle", name: "Entry", outside: "21 g", takes: ".018 in" }],
    ["a needle as measured", { sort: "needle", name: "Entry", outside: "0.82 mm" }],
    ["a size that nobody knows", { ...tube, outside: "?" }],
    ["a size that is estimated", { ...tube, outside: "~10.2 f" }],
    ["a stiffener in millimetres", { sort: "stiffener", name: "Stiffener", outside: "1.27 mm" }],
  ])("is the same when it is typed again as it is written: %s", (_, texts) => {
    const type = read(texts);
    expect(read(typeTexts(type))).toEqual(type);
  });
});

describe("an outside is read by its sort", () => {
  it.each([
    ["needle", "21 g", gaugeOutside[21]],
    ["wire", "0.889 mm", lengthOf(0.035, "in")],
    ["dilator", "12 f", lengthOf(12, "F")],
    ["sheath", "3.0 mm", lengthOf(9, "F")],
  ])("of a %s %s", (sort, outside, length) => {
    expect(read({ sort, name: "It", outside }).outside).toEqual(confirmed(length));
  });

  it.each([
    ["wire", "8 f", 'outside: "8 f" does not tell a wire\'s size. Type it like 0.035 in or 0.889 mm.'],
    [
      "wire",
      ".35 in",
      "outside: .35 in is outside what is made (0.01 to 0.052 in). Check the number and the unit.",
    ],
    ["tube", "80 f", "outside: 80 F is outside what is made (3 to 40 F). Check the number and the unit."],
    ["tube", "21 g", 'outside: "21 g" does not tell a tube\'s outside. Type it like 8 F or 2.7 mm.'],
    [
      "needle",
      "5 g",
      "outside: No outside is kept for 5 g, only for 18, 19, 20, 21, 22 G. Type the outside in mm or in.",
    ],
    ["tube", "8", 'outside: "8" needs a unit: F, in, mm, cm or G.'],
    ["tube", "-8 f", 'outside: "-8 f" must be more than zero.'],
    ["tube", "", "outside: Type a size with its unit, or ? if it is unknown."],
  ])("of a %s %s is refused", (sort, outside, sentence) => {
    expect(refused({ sort, name: "It", outside })).toEqual([sentence]);
  });

  it.each([
    ["8 f", { echo: "8 F (2.67 mm)" }],
    [".035 in", { echo: "0.035 in (0.889 mm)" }],
    ["21 g", { echo: "0.03225 in (0.819 mm)" }],
    ["~8 f", { echo: "about 8 F (2.67 mm)" }],
    ["?", { echo: "unknown" }],
  ])("and %s is echoed before the sort is chosen", (text, reading) => {
    expect(readField(fields.outside, text)).toEqual(reading);
  });
});

describe("a length is read by its sort", () => {
  it.each([
    ["wire", "30", []],
    ["wire", "29", ["length: 29 cm is outside what is made (30 to 450 cm). Check the number and the unit."]],
    ["tube", "150", []],
    ["tube", "260", ["length: 260 cm is outside what is made (5 to 150 cm). Check the number and the unit."]],
  ])("of a %s %s cm", (sort, length, sentences) => {
    expect(refused({ sort, name: "It", outside: "?", length })).toEqual(sentences);
  });
});

describe("an inside against the outside of 8 F, 2.667 mm", () => {
  const wider = (place: string, inside: string) =>
    `The inside (${place} ${inside}) is wider than the outside (8 F): check both.`;

  it.each([
    ["just under", "shaft 2.66 mm", []],
    ["just over", "shaft 2.67 mm", [`bores: ${wider("shaft", "2.67 mm")}`]],
    ["at the end hole", "end hole 2.9 mm", [`bores: ${wider("end hole", "2.9 mm")}`]],
    ["at a hub, which is wider than the shaft", "hub 4 mm, valve 3 mm, stopcock 3 mm", []],
    ["unknown", "shaft ?", []],
  ])("%s", (_, bores, sentences) => {
    expect(refused({ ...tube, bores })).toEqual(sentences);
  });

  it("of the label is asked too, and nothing where the outside is unknown", () => {
    expect(refused({ ...tube, takesDevice: "8 f" })).toEqual([]);
    expect(refused({ ...tube, takesDevice: "9 f" })).toEqual([
      `takesDevice: ${wider("takes a device of", "9 F")}`,
    ]);
    expect(refused({ ...tube, outside: "3 f", takes: ".040 in" })).toEqual([
      "takes: The inside (takes a wire of 0.040 in) is wider than the outside (3 F): check both.",
    ]);
    expect(refused({ ...tube, outside: "?", bores: "shaft 13 mm" })).toEqual([]);
  });

  it("in French is no inside", () => {
    expect(refused({ ...tube, bores: "shaft 8 f" })).toEqual([
      'bores: "8 f" does not tell an inside. Type it like 1.9 mm or 0.075 in.',
    ]);
  });
});

describe("what only another sort has is refused", () => {
  it("of a wire every inside", () => {
    const insides = { takes: ".035 in", takesDevice: "5 f", bores: "shaft 1 mm", endHole: "open" };
    expect(refused({ ...wire, ...insides })).toEqual(
      ["takes", "takesDevice", "endHole", "bores"].map(
        (field) => `${field}: A wire is solid: leave this blank, or choose another sort.`,
      ),
    );
  });

  it("but not that nobody knows it", () => {
    expect(refused({ ...wire, takes: "?", takesDevice: "?", endHole: "?" })).toEqual([]);
  });

  it("of a sheath the kinds", () => {
    expect(refused({ ...tube, sort: "sheath", kinds: "pcn" })).toEqual([
      "kinds: Only a tube has a kind: leave this blank, or choose the sort tube.",
    ]);
  });
});

describe("a name", () => {
  const shelf = [shelfType({ id: "one", name: "Standard" })];

  it("that another type has is refused, its own is not", () => {
    const again = { ...wire, name: " standard " };
    expect(shelfForm.read(again, { shelf, changes: "one" }).ok).toBe(true);
    expect(shelfForm.read(again, { shelf, changes: null })).toMatchObject({
      ok: false,
      refusals: [{ code: "shelf-name-taken", field: "name" }],
    });
  });
});
