import { describe, expect, it } from "vitest";
import { nameCell, nameIsUnclear } from "#shared/sheet/name-cell.ts";
import { plainCell } from "#shared/sheet/plain-cell.ts";

describe("a cell as a person reads it", () => {
  const read = (cell: string) => {
    const result = plainCell(cell);
    return result.ok ? result.value : result.refusal.code;
  };

  it.each([
    ["  8 F ", "8 F"],
    ["\u00a0004711\u00a0", "004711"],
    ['="004711"', "004711"],
    ["'+44 555 0117", "+44 555 0117"],
    ["'=2+2", "=2+2"],
    ["''=2+2", "'=2+2"],
    ["'tis said", "'tis said"],
    ["+44 555 0117", "+44 555 0117"],
    ["-3", "-3"],
    ["- afebrile", "- afebrile"],
    ["+ve swab", "+ve swab"],
    ["O'Brackenfold", "O'Brackenfold"],
    ["=A1+3", "cell-formula"],
    ["=HYPERLINK(1)", "cell-formula"],
    ["@SUM(1)", "cell-formula"],
    ["+A1", "cell-formula"],
    ["#REF!", "cell-broken"],
    ["#N/A", "cell-broken"],
    ["########", "cell-broken"],
    ["#4 of 5", "#4 of 5"],
  ])("%j: %j", (cell, text) => expect(read(cell)).toBe(text));
});

describe("a whole name", () => {
  const read = (cell: string, order: Parameters<typeof nameCell>[1] = null) => {
    const result = nameCell(cell, order);
    return result.ok ? `${result.value.familyName} | ${result.value.givenName}` : result.refusal.code;
  };

  it.each([
    ["Brackenfold, Ottoline", null, "Brackenfold | Ottoline"],
    ["Ottoline May Brackenfold", "given name first", "Brackenfold | Ottoline May"],
    ["Brackenfold Ottoline May", "family name first", "Brackenfold | Ottoline May"],
    ["Ottoline Brackenfold", null, "name-order-unclear"],
    ["Ottoline", "given name first", "name-one-word"],
    ["", null, "text-missing"],
  ] as const)("%j with %s: %s", (cell, order, names) => expect(read(cell, order)).toBe(names));

  it("asks for the order only where it matters", () => {
    expect([nameIsUnclear("Brackenfold, Ottoline"), nameIsUnclear("Ottoline Brackenfold")]).toEqual([
      false,
      true,
    ]);
  });
});
