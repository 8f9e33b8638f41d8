import { describe, expect, it } from "vitest";
import { differences } from "./differences.ts";

const got = {
  order: ["left call", "left exchange"],
  steps: { "left exchange": { target: "2026-10-30", earliest: null, why: { row: { latest: 90 } } } },
};

describe("an expectation", () => {
  it.each([
    ["a part of what came out", { steps: { "left exchange": { target: "2026-10-30" } } }],
    ["a whole list", { order: ["left call", "left exchange"] }],
    ["nothing where nothing came out", { steps: { "right exchange": null } }],
    ["nothing where null came out", { steps: { "left exchange": { earliest: null } } }],
    [
      "a line of the why with one of its arguments",
      { steps: { "left exchange": { why: { row: { latest: 90 } } } } },
    ],
  ])("agrees with %s", (_, expected) => {
    expect(differences(expected, got)).toEqual([]);
  });

  it.each([
    [
      "another value",
      { steps: { "left exchange": { target: "2026-10-31" } } },
      { at: "steps.left exchange.target", expected: "2026-10-31", got: "2026-10-30" },
    ],
    ["a shorter list", { order: ["left call"] }, { at: "order", expected: ["left call"], got: got.order }],
    [
      "another order",
      { order: ["left exchange", "left call"] },
      { at: "order.0", expected: "left exchange", got: "left call" },
    ],
    ["a name that nothing has", { stepz: {} }, { at: "stepz", expected: {}, got: null }],
    ["nothing where something came out", { order: null }, { at: "order", expected: null, got: got.order }],
    ["a text for a number", { steps: { "left exchange": { why: { row: { latest: "90" } } } } }, { got: 90 }],
    ["a name that every object has", { constructor: null, steps: 1 }, { at: "steps" }],
  ])("differs from %s", (_, expected, first) => {
    expect(differences(expected, got)[0]).toMatchObject(first);
  });
});
