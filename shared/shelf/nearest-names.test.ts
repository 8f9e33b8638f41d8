import { expect, it } from "vitest";
import { nearestNames } from "#shared/shelf/nearest-names.ts";

const names = [
  "Dilator 8",
  "Dilator 9",
  "Standard 0.035, 145 cm",
  "Stiff 0.035, 145 cm",
  "Thin 0.018",
  "Drain 8",
];

it.each([
  ["Dilater 9", "Dilator 9"],
  ["stif 0.035", "Stiff 0.035, 145 cm"],
  ["0.018 thin", "Thin 0.018"],
  ["darin 8", "Drain 8"],
])("the name nearest to %s is %s", (typed, nearest) => {
  expect(nearestNames(typed, names)[0]).toBe(nearest);
});

it("offers five at most, and none where there is none", () => {
  expect(nearestNames("x", names)).toHaveLength(5);
  expect(nearestNames("x", [])).toEqual([]);
});
