import { describe, expect, it } from "vitest";
import type { RefusalCode } from "#shared/errors/codes.ts";
import { isType, shelfOrSizeField } from "#shared/record/field/shelf-or-size-field.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { F } from "#tests/factories/coaxial.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";
import { estimated, inch } from "#tests/factories/tube-inside.ts";

const usual = shelfType();
const stiff = shelfType({ name: "Stiff 0.038, 145 cm", outside: confirmed(inch(0.038)) });
const numbered = shelfType({ name: "0.035 in hydrophilic" });
const bare = shelfType({ name: "0.018 in", outside: confirmed(inch(0.018)) });
const drain = shelfType({ name: "Drain 8 F", sort: "tube", outside: confirmed(F(8)) });
const shelf = [usual, stiff, numbered, bare, drain];

const field = shelfOrSizeField({ label: "Wire" }, { thing: "wire", sort: "wire" }, { shelf });
const read = (text: string) => {
  const answer = field.read(text);
  return answer.ok ? answer.value : answer.refusal.code;
};

describe("a size, or a name of the shelf", () => {
  it.each(["", "  "])("%j is nothing", (text) => {
    expect(read(text)).toBeUndefined();
  });

  it.each([
    [".035 in", confirmed(inch(0.035))],
    [",035 in", confirmed(inch(0.035))],
    ["0.889 mm", confirmed(inch(0.035))],
    [" ~0.038 in", estimated(inch(0.038))],
    ["?", unknownFact],
    // The beginning of a name, and a size: the size that was typed.
    ["0.035 in", confirmed(inch(0.035))],
  ])("%j is a size", (text, fact) => {
    expect(read(text)).toEqual(fact);
  });

  it.each([
    ["Standard 0.035", usual],
    ["  standard   0.035 ", usual],
    ["stiff", stiff],
    ["0.035 in hydrophilic", numbered],
    ["0.035 IN HYDROPHILIC", numbered],
    // No size, and the beginning of one name only.
    ["0.035 in hyd", numbered],
    // Written out in full the name goes before the size that it reads like.
    ["0.018 in", bare],
  ])("%j is on the shelf", (text, type) => {
    expect(read(text)).toBe(type);
  });

  it.each<[string, RefusalCode]>([
    ["0.035", "length-needs-unit"],
    ["8 mm", "length-absurd"],
    ["-0.035 in", "length-not-positive"],
    ["−0.035 in", "length-not-positive"],
    ["8 F", "length-unit-unfit"],
    ["0.035 stone", "length-not-understood"],
    ["floppy", "shelf-name-unknown"],
    ["s", "shelf-name-unclear"],
    // A tube is no wire.
    ["Drain 8 F", "shelf-name-unknown"],
  ])("%j asks: %s", (text, code) => {
    expect(read(text)).toBe(code);
  });

  it("says back what it read", () => {
    expect(field.echo?.(undefined)).toBe("");
    expect(field.echo?.(confirmed(inch(0.035)))).toBe("0.035 in (0.889 mm)");
    expect(field.echo?.(stiff)).toBe("Stiff 0.038, 145 cm: 0.038 in");
  });

  it("a name that another sort has is no name here", () => {
    const tubes = shelfOrSizeField(
      { label: "Tube" },
      { thing: "tube outside", sort: "tube" },
      { shelf: [drain, bare] },
    );
    expect(tubes.read("0.018 in")).toMatchObject({ ok: false, refusal: { code: "length-absurd" } });
    expect(tubes.read("drain")).toEqual({ ok: true, value: drain });
  });
});

it("tells a type from a size", () => {
  expect([isType(usual), isType(confirmed(inch(0.035))), isType(unknownFact)]).toEqual([true, false, false]);
});
