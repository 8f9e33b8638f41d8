import { addDays, day } from "#shared/day/day.ts";
import { endOfDay, startOfDay, zone } from "#shared/day/instant.ts";
import { millilitres } from "#shared/output/microlitre.ts";
import type { NetDay } from "#shared/output/net-day.ts";
import { type MlPer24h, ratePer24h } from "#shared/output/rate.ts";

const utc = zone("UTC");
const DAY_MS = 86_400_000;

/** A whole, complete day of so many mL in 24 h, in the first segment. */
export function netDayOf(on: string, ml: number, overrides: Partial<NetDay> = {}): NetDay {
  const ul = millilitres(ml);
  return {
    day: day(on),
    segment: 0,
    from: startOfDay(day(on), utc),
    to: endOfDay(day(on), utc),
    whole: true,
    net: { kind: "known", ul, mlPer24h: ratePer24h(ul, DAY_MS) },
    coveredMs: DAY_MS,
    complete: true,
    because: [],
    remarks: [],
    readings: [`r-${on}`],
    ...overrides,
  };
}

/** One day after the other from 1 November 2026, each with its mL in 24 h; null is a day that nobody measured. */
export const netDaySeries = (values: readonly (number | null)[]): readonly NetDay[] =>
  values.map((ml, index) =>
    netDayOf(
      addDays(day("2026-11-01"), index),
      ml ?? 0,
      ml === null
        ? { net: { kind: "missing" }, complete: false, because: ["no-reading"], coveredMs: 0, readings: [] }
        : {},
    ),
  );

export const rate = (ml: number): MlPer24h => ml as MlPer24h;
