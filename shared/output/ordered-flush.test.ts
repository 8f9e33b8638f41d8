import { expect, it } from "vitest";
import { orderedFlush } from "./ordered-flush.ts";

it.each([
  ["10 mL x 3 a day", 10],
  ["10-20 mL x 2-4 a day", 20],
  ["5 ml before, 10 mL after", 10],
  ["2.5 mL once a day", 2.5],
  ["none", 0],
  ["as the ward does", 0],
  ["3 x a day", 0],
])("%j lets in %d mL at a time", (order, ml) => {
  expect(orderedFlush(order)).toBe(ml * 1000);
});
