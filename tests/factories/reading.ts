import { type Instant, instant, zone } from "#shared/day/instant.ts";
import { millilitres } from "#shared/output/microlitre.ts";
import type { NetDaysInput } from "#shared/output/net-days.ts";
import type { Reading } from "#shared/output/reading.ts";
import { confirmed } from "#shared/tube/certainty.ts";

/** `2026-11-07T03:00Z` as an instant. */
export const at = (iso: string): Instant => instant(Date.parse(iso));

export const clinicZone = zone("America/New_York");

/** Gross millilitres, confirmed. */
export const gross = (ml: number): Reading["gross"] => confirmed(millilitres(ml));

export const flush = (ml: number): Reading["flushGiven"] => ({ ul: millilitres(ml), estimated: false });

/** A plain emptying of 25 mL over the whole of Mon 2 Nov 2026 in New York, without flush. */
export function reading(overrides: Partial<Reading> = {}): Reading {
  return {
    id: "reading-1",
    tubeId: "tube-1",
    from: at("2026-11-02T05:00Z"),
    to: at("2026-11-03T05:00Z"),
    zone: clinicZone,
    gross: gross(25),
    basis: "gross",
    flushGiven: "none",
    flushWithdrawn: "none",
    otherIn: [],
    measuredBy: "bag scale",
    characters: ["serous"],
    leak: "none",
    airLeak: "not recorded",
    swing: "not recorded",
    symptoms: "not recorded",
    procedureAspirate: false,
    reportedBy: "patient",
    asSpoken: "25",
    ...overrides,
  };
}

/** What netDays is asked with: flush ordered, no cuts, a row of -10 mL/24 h, a week after the plain reading. */
export const netDaysInput = (
  readings: readonly Reading[],
  overrides: Partial<NetDaysInput> = {},
): NetDaysInput => ({
  readings,
  zone: clinicZone,
  flushOrdered: true,
  cuts: [],
  placedAt: null,
  outAt: null,
  row: { flushDoesNotComeBackMl: -10 },
  now: at("2026-11-09T17:00Z"),
  ...overrides,
});
