import { day } from "#shared/day/day.ts";
import type { PlausibilityRow } from "#shared/output/plausible.ts";
import type { MlPer24h } from "#shared/output/rate.ts";
import type { ReadingBeside } from "#shared/record/output/reading-beside.ts";

/** The row of the example protocol. */
export const examplePlausible: PlausibilityRow = {
  overMlPer24h: 5000 as MlPer24h,
  overTimesMedian: 10,
  andMoreMl: 100,
};

/** An abscess drain of which nothing is logged yet, in since 20 Aug 2026, flushed with 10 mL three times a day. */
export const noOutputYet: ReadingBeside = {
  group: "collection",
  inSince: day("2026-08-20"),
  outBy: null,
  placedAt: null,
  flushOrder: "10 mL x 3 a day",
  emptied: [],
  days: [],
  plausible: examplePlausible,
};
