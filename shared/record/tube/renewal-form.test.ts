import { describe, expect, it } from "vitest";
import { payloads } from "#shared/tube/payloads.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { exchangeForm, newPunctureForm, salvageForm, upsizeForm } from "./renewal-form.ts";

const context = formContext();
const today = { precision: "day", earliest: "2026-11-06", latest: "2026-11-06" };

describe("an exchange", () => {
  it("is recorded with nothing typed: today, here, the size as before", () => {
    const result = exchangeForm.read({}, context);
    expect(result).toEqual({
      ok: true,
      entry: {
        kind: "exchanged",
        when: today,
        time: null,
        payload: { facts: {}, plan: null, elsewhere: null, difficult: false, note: null },
      },
    });
    expect(result.ok && payloads.exchanged.safeParse(result.entry.payload).success).toBe(true);
  });

  it("done elsewhere makes reported facts of what is typed, and leaves an estimate one", () => {
    const texts = {
      when: "yesterday 23:10",
      size: "10f",
      takes: "~.035 in",
      plan: "exchange by +77",
      elsewhere: "Invented General, at night",
      difficult: "yes",
      retention: "?",
      note: "told by the ward",
    };
    const result = exchangeForm.read(texts, context);
    expect(result).toEqual({
      ok: true,
      entry: {
        kind: "exchanged",
        when: { precision: "day", earliest: "2026-11-05", latest: "2026-11-05" },
        time: "23:10",
        payload: {
          facts: {
            size: { certainty: "reported", value: 5_000_000 },
            takes: { certainty: "estimated", value: 1_333_500 },
            retention: { certainty: "unknown" },
          },
          plan: { act: "exchange", by: "2027-01-22", byWhom: null, reason: null },
          elsewhere: "Invented General, at night",
          difficult: true,
          note: "told by the ward",
        },
      },
    });
    expect(result.ok && payloads.exchanged.safeParse(result.entry.payload).success).toBe(true);
  });
});

describe("the other renewals", () => {
  it("an upsize says its size, though ? will do", () => {
    const asked = upsizeForm.read({}, context);
    expect(asked).toMatchObject({ ok: false, refusals: [{ field: "size", code: "text-missing" }] });
    expect(upsizeForm.read({ size: "?" }, context)).toMatchObject({
      ok: true,
      entry: { kind: "upsized", payload: { facts: { size: { certainty: "unknown" } } } },
    });
  });

  it.each([
    [salvageForm, "salvaged"],
    [newPunctureForm, "new puncture"],
  ] as const)("keep their kind", (form, kind) => {
    const result = form.read({ size: "8 f" }, context);
    expect(result).toMatchObject({ ok: true, entry: { kind, when: today } });
    expect(result.ok && payloads[kind].safeParse(result.entry.payload).success).toBe(true);
  });
});

it.each([
  ["when", "tomorrow", "day-in-future"],
  ["when", "today 23:00", "time-in-future"],
  ["size", "800 F", "length-absurd"],
  ["size", "8,5", "length-needs-unit"],
  ["takes", ".035", "length-needs-unit"],
  ["plan", "later", "plan-not-understood"],
  ["externalLength", "12 F", "length-unit-unfit"],
  ["elsewhere", "x".repeat(500), "text-too-long"],
  ["difficult", "perhaps", "choice-unknown"],
])("refuses %s %j: %s", (field, text, code) => {
  expect(exchangeForm.read({ [field]: text }, context)).toMatchObject({
    ok: false,
    refusals: [{ field, code }],
  });
});
