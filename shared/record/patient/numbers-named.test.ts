import { describe, expect, it } from "vitest";
import { numbersNamed } from "#shared/record/patient/numbers-named.ts";

describe("record numbers that a remark names", () => {
  it.each([
    ["Fernhollow has a record F-2209 with a check that is not here.", ["F-2209"]],
    ["also (880012), and 880012 again; see MRN/0417.", ["880012", "MRN/0417"]],
    ["Rows 1203 and 1207 of a list brought in have one name and birth date, under two numbers.", []],
    ["Row 4711 of a list brought in has the name of record 4712.", ["4712"]],
    ["one address, tube 12", []],
    ["", []],
  ])("%s", (says, numbers) => {
    expect(numbersNamed(says)).toEqual(numbers);
  });

  it("looks at ten at most", () => {
    const says = Array.from({ length: 30 }, (_, index) => `N${1000 + index}`).join(" ");
    expect(numbersNamed(says)).toHaveLength(10);
  });
});
