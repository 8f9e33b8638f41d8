import { expect, it } from "vitest";
import { lengthOf } from "#shared/size/exact-length.ts";
import { printExactly } from "#shared/size/print-exactly.ts";

it.each([
  [8, "F", "8 F"],
  [8.5, "F", "8.5 F"],
  // 2.7 mm is 8.1 F; 2.675 mm is 8.025 F, which French in two decimals would round.
  [2.7, "mm", "8.1 F"],
  [2.675, "mm", "2.675 mm"],
  [0.107, "in", "0.107 in"],
] as const)("%d %s is %s", (figure, unit, text) => {
  expect(printExactly(lengthOf(figure, unit), ["F", "mm", "in"])).toBe(text);
});
