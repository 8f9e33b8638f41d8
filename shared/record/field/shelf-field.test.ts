import { describe, expect, it } from "vitest";
import { shelfField } from "#shared/record/field/shelf-field.ts";
import { readField } from "#shared/record/field-spec.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";

const shelf = [
  shelfType({ name: "Standard 0.035, 145 cm", outside: confirmed(lengthOf(0.035, "in")) }),
  shelfType({ name: "Standard 0.035, 260 cm", outside: confirmed(lengthOf(0.035, "in")) }),
  shelfType({ name: "Thin 0.018, 180 cm", outside: confirmed(lengthOf(0.018, "in")) }),
  shelfType({ sort: "tube", name: "Drain 8", outside: confirmed(lengthOf(8, "F")) }),
  shelfType({
    sort: "tube",
    name: "Drain 8 long",
    outside: { certainty: "estimated", value: lengthOf(8, "F") },
  }),
  shelfType({ sort: "needle", name: "Entry needle", outside: confirmed(lengthOf(0.03225, "in")) }),
  shelfType({ sort: "stiffener", name: "Stiffener", outside: unknownFact }),
];

const wires = shelfField({ label: "Wire" }, ["wire"], { shelf });
const tubes = shelfField({ label: "Tube" }, ["tube"], { shelf });
const needles = shelfField({ label: "Needle" }, ["needle", "stiffener"], { shelf });

describe("a type of the shelf by name", () => {
  it.each([
    ["in full", wires, "Standard 0.035, 145 cm", "Standard 0.035, 145 cm: 0.035 in"],
    ["in another case", wires, "STANDARD 0.035,  145 CM", "Standard 0.035, 145 cm: 0.035 in"],
    ["by a beginning that one has", wires, "thin", "Thin 0.018, 180 cm: 0.018 in"],
    ["in full where another begins so too", tubes, "drain 8", "Drain 8: 8 F"],
    ["with a size that is estimated", tubes, "drain 8 l", "Drain 8 long: about 8 F"],
    ["a needle by its gauge", needles, "entry", "Entry needle: 21 G"],
    ["with a size that nobody knows", needles, "stiff", "Stiffener: size unknown"],
  ])("is read %s", (_, field, text, echo) => {
    expect(readField(field, text)).toEqual({ echo });
  });

  it("is nothing chosen where the field is blank", () => {
    expect(wires.read("  ")).toEqual({ ok: true, value: null });
    expect(readField(wires, "")).toEqual({});
  });

  it("is refused with the names that begin so where more than one does", () => {
    expect(wires.read("stand")).toEqual({
      ok: false,
      refusal: {
        code: "shelf-name-unclear",
        args: { text: "stand", names: "Standard 0.035, 145 cm; Standard 0.035, 260 cm" },
      },
    });
  });

  it("is refused with the nearest names of its sorts where none does", () => {
    expect(readField(wires, "Tin 0.018").problem).toBe(
      'Nothing on the shelf is called "Tin 0.018". The nearest names are: Thin 0.018, 180 cm; Standard 0.035, 145 cm; Standard 0.035, 260 cm. Type one of them, or leave this blank.',
    );
    expect(readField(wires, "Drain 8").problem).not.toContain("Drain 8 long");
  });

  it("says so where the shelf has none of the sort", () => {
    const sheaths = shelfField({ label: "Sheath" }, ["sheath"], { shelf });
    expect(readField(sheaths, "9 F").problem).toBe(
      'Nothing of this sort is on the shelf yet, so "9 F" is not found. Add it on the page Shelf, or leave this blank.',
    );
  });
});
