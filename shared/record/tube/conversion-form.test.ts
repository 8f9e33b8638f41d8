import { describe, expect, it } from "vitest";
import { payloads } from "#shared/tube/payloads.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { conversionForm } from "./conversion-form.ts";

const context = formContext();

describe("a conversion", () => {
  it("closes one tube and opens the next, the side carried along (hard case 21)", () => {
    const result = conversionForm.read({ kind: "nuc", size: "8.5 f", plan: "" }, context);
    expect(result).toMatchObject({
      ok: true,
      entry: {
        kind: "converted",
        when: { earliest: "2026-11-06" },
        payload: {
          closes: "tube-1",
          opens: "tube-2",
          opening: {
            kind: "nephroureteral catheter",
            number: 2,
            side: { certainty: "confirmed", value: "left" },
            mode: "to bag",
            facts: { size: { certainty: "confirmed", value: 4_250_000 } },
          },
        },
      },
    });
    expect(result.ok && payloads.converted.safeParse(result.entry.payload).success).toBe(true);
  });

  it("takes another side when one is typed", () => {
    expect(conversionForm.read({ kind: "jj r", size: "?" }, context)).toMatchObject({
      ok: true,
      entry: { payload: { opening: { side: { certainty: "confirmed", value: "right" } } } },
    });
  });

  it("carries an unknown side as unknown", () => {
    const unsided = formContext({
      tube: {
        id: "tube-1",
        kind: "nephrostomy",
        role: "drains an organ",
        mode: "to bag",
        side: { certainty: "unknown" },
        concerns: [],
        inSince: null,
        alarm: [],
      },
    });
    expect(conversionForm.read({ kind: "jj", size: "6 f" }, unsided)).toMatchObject({
      ok: true,
      entry: { payload: { opening: { side: { certainty: "unknown" } } } },
    });
  });

  it.each([
    ["kind", "", "text-missing"],
    ["size", "800 F", "length-absurd"],
    ["when", "tomorrow", "day-in-future"],
  ])("refuses %s %j: %s", (field, text, code) => {
    expect(conversionForm.read({ kind: "jj", size: "6 f", [field]: text }, context)).toMatchObject({
      ok: false,
      refusals: [{ field, code }],
    });
  });
});
