import { expect, it } from "vitest";
import { microlitres, millilitres, noVolume, sum, toMl } from "./microlitre.ts";
import { amountSchema, microlitresSchema } from "./microlitre-schema.ts";

it.each([0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])("%s is no volume", (count) => {
  expect(() => microlitres(count)).toThrow(RangeError);
  expect(microlitresSchema.safeParse(count).success).toBe(false);
});

it("millilitres become whole microlitres and come back", () => {
  expect(millilitres(17.5)).toBe(17_500);
  expect(millilitres(0.1 + 0.2)).toBe(300);
  expect(toMl(millilitres(-10))).toBe(-10);
  expect(Object.is(millilitres(-0), 0)).toBe(true);
});

it("a sum of none is nothing", () => {
  expect(sum([])).toBe(noVolume);
  expect(sum([millilitres(20), millilitres(-30)])).toBe(millilitres(-10));
});

it("an amount is not below zero, any other volume may be", () => {
  expect(amountSchema.safeParse(-1).error?.issues[0]?.message).toBe("volume-negative");
  expect(amountSchema.safeParse(0).success).toBe(true);
  expect(microlitresSchema.safeParse(-1).success).toBe(true);
});
