import { expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { partNow } from "./part-now.ts";

/** Hours by the example rows (common practice, no source): mornings from nine, evenings until eight. */
const hours = exampleProtocol.calls?.hours ?? [];

it("a minute belongs to one part of the day: its beginning to it, its end to the next", () => {
  const [first, ...rest] = hours.toSorted((a, b) => a.from - b.from);
  const clock = (hour: number): string => `${String(hour).padStart(2, "0")}:00`;
  expect(first).toBeDefined();
  for (const { part, from } of hours) expect(partNow(clock(from), hours)).toBe(part);
  for (const { from } of rest)
    expect(partNow(`${String(from - 1).padStart(2, "0")}:59`, hours)).not.toBe(partNow(clock(from), hours));
});

it("outside of all of them, and without a row, it is no part", () => {
  expect(partNow("03:00", hours)).toBeNull();
  expect(partNow("23:59", hours)).toBeNull();
  expect(partNow("10:00", [])).toBeNull();
});
