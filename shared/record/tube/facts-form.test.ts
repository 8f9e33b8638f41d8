import { describe, expect, it } from "vitest";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { payloads } from "#shared/tube/payloads.ts";
import type { Side } from "#shared/tube/vocabulary.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { factsForm } from "./facts-form.ts";

const context = formContext();

describe("facts of the tube in place", () => {
  it("says only what is typed: confirming 8 F says nothing of the inside", () => {
    const result = factsForm.read({ size: "8 f" }, context);
    expect(result).toEqual({
      ok: true,
      entry: {
        kind: "facts noted",
        when: { precision: "day", earliest: "2026-11-06", latest: "2026-11-06" },
        time: null,
        payload: { facts: { size: { certainty: "confirmed", value: 4_000_000 } }, note: null },
      },
    });
    expect(result.ok && payloads["facts noted"].safeParse(result.entry.payload).success).toBe(true);
  });

  it("makes reported facts of what was told, and says who told", () => {
    const texts = { takes: ".038 in", bores: "hub 2 mm, shaft ?", mode: "to bag", toldBy: "letter" };
    const result = factsForm.read(texts, context);
    expect(result).toMatchObject({
      ok: true,
      entry: {
        payload: {
          facts: {
            takes: { certainty: "reported", value: 1_447_800 },
            bores: [
              { place: "hub", inside: { certainty: "reported", value: 3_000_000 } },
              { place: "shaft", inside: { certainty: "unknown" } },
            ],
          },
          mode: "to bag",
          toldBy: "letter",
        },
      },
    });
    expect(result.ok && payloads["facts noted"].safeParse(result.entry.payload).success).toBe(true);
  });

  it.each([
    ["unknown", unknownFact, "left"],
    ["told", { certainty: "reported", value: "right" } as const, "left"],
    ["seen", confirmed<Side>("left"), "left"],
  ])("takes the side that was %s before", (_name, side, typed) => {
    const tube = {
      id: "tube-1",
      kind: "nephrostomy" as const,
      role: "drains an organ" as const,
      mode: "to bag" as const,
      side,
      concerns: [],
      inSince: null,
      alarm: [],
    };
    expect(factsForm.read({ side: typed }, formContext({ tube }))).toMatchObject({
      ok: true,
      entry: { payload: { facts: {}, side: { certainty: "confirmed", value: "left" } } },
    });
    expect(factsForm.read({ side: typed, toldBy: "letter" }, formContext({ tube }))).toMatchObject({
      ok: true,
      entry: { payload: { side: { certainty: "reported", value: "left" } } },
    });
  });

  it.each([
    ["right", "side-stands"],
    ["?", "side-stands"],
    ["not sided", "side-missing"],
  ])("of a side that was seen refuses %s: %s", (typed, code) => {
    const tube = {
      id: "tube-1",
      kind: "nephrostomy" as const,
      role: "drains an organ" as const,
      mode: "to bag" as const,
      side: confirmed<Side>("left"),
      concerns: [],
      inSince: null,
      alarm: [],
    };
    expect(factsForm.read({ side: typed }, formContext({ tube }))).toMatchObject({
      ok: false,
      refusals: [{ code, field: "side" }],
    });
  });

  it("takes an unknown as something said", () => {
    expect(factsForm.read({ size: "?" }, context)).toMatchObject({
      ok: true,
      entry: { payload: { facts: { size: { certainty: "unknown" } } } },
    });
  });

  it("refuses an entry that says nothing", () => {
    expect(factsForm.read({ toldBy: "letter" }, context)).toEqual({
      ok: false,
      refusals: [{ code: "nothing-said", field: "size" }],
    });
  });
});

it.each([
  ["size", "800 F", "length-absurd"],
  ["size", "8,5", "length-needs-unit"],
  ["takes", ".035", "length-needs-unit"],
  ["fullLength", "3", "length-absurd"],
  ["when", "tomorrow", "day-in-future"],
  ["note", "x".repeat(2001), "text-too-long"],
])("refuses %s %j: %s", (field, text, code) => {
  expect(factsForm.read({ size: "8 f", [field]: text }, context)).toMatchObject({
    ok: false,
    refusals: [{ field, code }],
  });
});
