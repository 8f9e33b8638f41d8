import { describe, expect, it } from "vitest";
import { payloads } from "#shared/tube/payloads.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { readAmendment } from "./read-amendment.ts";
import { voidForm } from "./void-form.ts";

const context = formContext();

describe("an amendment", () => {
  it("is the entry read again by its own form, with a reason", () => {
    const texts = { amendedBecause: "wrong size typed", when: "14 oct", size: "10 f" };
    const result = readAmendment("exchanged", texts, context);
    expect(result).toEqual({
      ok: true,
      entry: {
        reason: "wrong size typed",
        when: { precision: "day", earliest: "2026-10-14", latest: "2026-10-14" },
        time: null,
        payload: {
          facts: { size: { certainty: "confirmed", value: 5_000_000 } },
          plan: null,
          elsewhere: null,
          difficult: false,
          note: null,
        },
      },
    });
    expect(result.ok && payloads.amended.safeParse(result.entry).success).toBe(true);
  });

  it("tells a missing reason and a field that cannot be read at once", () => {
    expect(readAmendment("exchanged", { size: "800 F" }, context)).toMatchObject({
      ok: false,
      refusals: [
        { field: "amendedBecause", code: "text-missing" },
        { field: "size", code: "length-absurd" },
      ],
    });
  });

  it("cannot make a placement of a tube taken over", () => {
    const texts = { amendedBecause: "placed here after all", kind: "pcn l", size: "8 f" };
    expect(readAmendment("taken over", texts, context)).toEqual({
      ok: false,
      refusals: [
        { code: "amendment-changes-kind", field: "from", args: { from: "taken over", to: "placed" } },
      ],
    });
  });
});

describe("voiding an entry", () => {
  it("needs a reason, and says when it belongs to another patient", () => {
    expect(voidForm.read({ reason: "entered twice" })).toEqual({
      ok: true,
      entry: { reason: "entered twice", wrongPatient: false },
    });
    expect(voidForm.read({ reason: "mixed up", wrongPatient: "yes" })).toMatchObject({
      entry: { wrongPatient: true },
    });
    expect(voidForm.read({})).toMatchObject({
      ok: false,
      refusals: [{ field: "reason", code: "text-missing" }],
    });
  });
});
