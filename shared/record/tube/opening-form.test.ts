import { describe, expect, it } from "vitest";
import { payloads } from "#shared/tube/payloads.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { openingForm } from "./opening-form.ts";

const context = formContext({ tube: null });
const read = (texts: Record<string, string>) => openingForm.read(texts, context);
const codes = (texts: Record<string, string>) => {
  const result = read(texts);
  return result.ok ? [] : result.refusals.map(({ code, field }) => [field, code]);
};

const unknown = { certainty: "unknown" };
const nothingKnown = {
  takes: unknown,
  endHole: unknown,
  fullLength: unknown,
  externalLength: unknown,
  retention: unknown,
  balloonMl: unknown,
  fixation: unknown,
  flushOrder: unknown,
};

describe("a record opens with five fields", () => {
  it("reads them to a placement; the rest is unknown, or usual for the kind", () => {
    const result = read({
      kind: "pcn l",
      side: "",
      size: "8f",
      when: "today",
      plan: "exchange by 30 dec Dr Example",
    });
    expect(result).toEqual({
      ok: true,
      entry: {
        kind: "placed",
        when: { precision: "day", earliest: "2026-11-06", latest: "2026-11-06" },
        time: null,
        payload: {
          kind: "nephrostomy",
          role: "drains an organ",
          mode: "to bag",
          number: 2,
          side: { certainty: "confirmed", value: "left" },
          organ: "kidney",
          route: null,
          cavity: null,
          indication: null,
          cancerObstruction: unknown,
          facts: { size: { certainty: "confirmed", value: 4_000_000 }, ...nothingKnown },
          plan: { act: "exchange", by: "2026-12-30", byWhom: "Dr Example", reason: null },
        },
      },
    });
    expect(result.ok && payloads.placed.safeParse(result.entry.payload).success).toBe(true);
  });

  it("takes a nephrostomy over 'in March', size unknown, and calls what it is told reported", () => {
    const result = read({
      kind: "neph",
      side: "r",
      size: "?",
      when: "in march",
      plan: "",
      from: "Invented General",
      retention: "locking loop",
      takes: ".035 in",
      externalLength: "~12",
      cancerObstruction: "yes",
    });
    const reported = (value: unknown) => ({ certainty: "reported", value });
    expect(result).toMatchObject({
      ok: true,
      entry: {
        kind: "taken over",
        when: { precision: "month", earliest: "2026-03-01", latest: "2026-03-31" },
        payload: {
          side: reported("right"),
          cancerObstruction: reported(true),
          facts: {
            size: unknown,
            retention: reported("locking loop"),
            takes: reported(1_333_500),
            externalLength: { certainty: "estimated", value: 12 * 15_000_000 },
          },
          from: "Invented General",
          tractSince: { precision: "unknown", earliest: null, latest: null },
          plan: null,
        },
      },
    });
    expect(result.ok && payloads["taken over"].safeParse(result.entry.payload).success).toBe(true);
  });

  it("takes over from an unknown place, with the puncture's own date", () => {
    const result = read({
      kind: "jj",
      side: "l",
      size: "6 f",
      when: "1 oct 2026",
      from: "?",
      tractSince: "2025",
    });
    expect(result).toMatchObject({
      ok: true,
      entry: {
        kind: "taken over",
        payload: { from: null, tractSince: { precision: "year", earliest: "2025-01-01" } },
      },
    });
  });

  it("keeps every detail that is typed", () => {
    const result = read({
      kind: "abscess",
      side: "",
      size: "10.2f",
      when: "yesterday 9:30",
      plan: "as protocol",
      takes: "0.038 in",
      endHole: "open",
      bores: "hub 2 mm",
      fullLength: "25",
      retention: "locking loop",
      fixation: "disc",
      flushOrder: "10 mL x 3 a day",
      balloon: "?",
      expectedFluid: "pur, deb",
      cavity: "left subphrenic",
      organ: "spleen",
      route: "transperitoneal",
      indication: "abscess",
      role: "collection",
      mode: "to bulb",
    });
    expect(result).toMatchObject({
      ok: true,
      entry: {
        kind: "placed",
        time: "09:30",
        payload: {
          side: unknown,
          mode: "to bulb",
          cavity: "left subphrenic",
          organ: "spleen",
          route: "transperitoneal",
          indication: "abscess",
          facts: {
            size: { value: 5_100_000 },
            takes: { certainty: "confirmed", value: 1_447_800 },
            endHole: { value: "open" },
            bores: [{ place: "hub", inside: { value: 3_000_000 }, tolerance: null }],
            fullLength: { value: 25 * 15_000_000 },
            fixation: { value: "disc" },
            flushOrder: { value: "10 mL x 3 a day" },
            balloonMl: unknown,
            expectedFluid: ["purulent", "debris"],
          },
        },
      },
    });
    expect(result.ok && payloads.placed.safeParse(result.entry.payload).success).toBe(true);
  });
});

const five = { kind: "pcn", side: "l", size: "8 f", when: "today", plan: "" };

describe("what it refuses", () => {
  it("asks for every field that is missing at once, each by name", () => {
    expect(codes({ kind: "", side: "", size: "", when: "" })).toEqual([
      ["kind", "text-missing"],
      ["size", "text-missing"],
      ["when", "day-missing"],
    ]);
  });

  it.each([
    ["when", "tomorrow", "day-in-future"],
    ["when", "14 nov 2026", "day-in-future"],
    ["when", "3/4/2026", "day-order-unclear"],
    ["size", "800 F", "length-absurd"],
    ["size", "8,5", "length-needs-unit"],
    ["size", "8", "length-needs-unit"],
    ["size", "-8 F", "length-not-positive"],
    ["takes", ".035", "length-needs-unit"],
    ["takes", "6 F", "length-unit-unfit"],
    ["plan", "maybe", "plan-not-understood"],
    ["side", "upper", "word-unknown"],
    ["kind", "hose", "word-unknown"],
    ["mode", "to sea", "choice-unknown"],
    ["cavity", "x".repeat(500), "text-too-long"],
    ["balloon", "500", "volume-absurd"],
  ])("%s %j: %s", (field, text, code) => {
    expect(codes({ ...five, [field]: text })).toEqual([[field, code]]);
  });

  it("reads 8,5 with its unit as eight and a half", () => {
    expect(read({ ...five, size: "8,5 F" })).toMatchObject({
      entry: { payload: { facts: { size: { value: 4_250_000 } } } },
    });
  });

  it("asks for the side of a kidney's tube, and takes ? for an answer", () => {
    expect(codes({ ...five, side: "" })).toEqual([["side", "side-missing"]]);
    expect(codes({ ...five, side: "not sided" })).toEqual([["side", "side-missing"]]);
    expect(read({ ...five, side: "?" })).toMatchObject({ ok: true, entry: { payload: { side: unknown } } });
  });

  it("refuses two sides that differ and takes two that agree", () => {
    expect(codes({ ...five, kind: "pcn r" })).toEqual([["side", "side-differs"]]);
    expect(codes({ ...five, kind: "pcn l" })).toEqual([]);
  });

  it("refuses a puncture after the tube, and one without a place it came from", () => {
    const later = { ...five, when: "1 oct 2026", from: "?", tractSince: "2 oct 2026" };
    expect(codes(later)).toEqual([["tractSince", "tract-after-tube"]]);
    expect(codes({ ...later, tractSince: "1 oct 2026" })).toEqual([]);
    expect(codes({ ...five, tractSince: "1 oct 2026" })).toEqual([["from", "text-missing"]]);
  });
});

it("opens in the kind; the five fields stand first", () => {
  expect(Object.keys(openingForm.fields(context)).slice(0, 5)).toEqual([
    "kind",
    "side",
    "size",
    "when",
    "plan",
  ]);
});

describe("a tube that is none of the kinds", () => {
  const other = { kind: "other", side: "l", size: "10f" };

  it("asks its role and its mode: neither is guessed", () => {
    expect(codes(other)).toEqual([
      ["role", "role-missing"],
      ["mode", "mode-missing"],
    ]);
    expect(codes({ ...other, role: "collection" })).toEqual([["mode", "mode-missing"]]);
    expect(codes({ ...other, mode: "to bag" })).toEqual([["role", "role-missing"]]);
  });

  it("opens with both", () => {
    expect(read({ ...other, role: "collection", mode: "to bag" })).toMatchObject({
      ok: true,
      entry: { payload: { kind: "other", role: "collection", mode: "to bag" } },
    });
  });
});
