import { expect, it } from "vitest";
import { withUnitOf } from "#shared/sheet/unit-in-heading.ts";

it.each([
  ["Size Fr", "8", "8 F"],
  ["Size (mm)", "2,7", "2,7 mm"],
  ["Inside, inch", ".038", ".038 in"],
  ["Length cm", "25", "25 cm"],
  ["Size", "8", "8"],
  ["Size Fr", "2.7 mm", "2.7 mm"],
  ["Size Fr", "~8", "~8"],
  ["Size Fr", "", ""],
])("under %j the cell %j is %j", (title, cell, read) => {
  expect(withUnitOf(title, cell)).toBe(read);
});
