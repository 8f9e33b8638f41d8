import { expect, it } from "vitest";
import { median } from "./median.ts";

it.each([
  [[3], 3],
  [[5, 1], 3],
  [[10, 9, 100], 10],
  [[-10, 4, 2, 0], 1],
  [[1, 1, 1, 9], 1],
])("the median of %j is %d", (values, expected) => {
  expect(median(values)).toBe(expected);
});

it("there is none of nothing, and the list stays as it was", () => {
  expect(median([])).toBeUndefined();
  const values = [3, 1, 2];
  expect(median(values)).toBe(2);
  expect(values).toEqual([3, 1, 2]);
});
