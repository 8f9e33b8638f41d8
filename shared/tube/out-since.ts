import { type Instant, instantAt, startOfDay, type Zone } from "#shared/day/instant.ts";
import type { When } from "#shared/day/when.ts";

const HOUR_MS = 3_600_000;

/** For how many whole hours a tube has been out: exact where the time is known, else the most that it can be. Null where no day is known. */
export type OutSince = { readonly hours: number; readonly exact: boolean } | null;

type Slipped = { readonly when: When; readonly time: string | null };

/**
 * Hours since a tube slipped out. Without a clock time it counts from the start of the earliest day that it may have been, so that the
 * error falls on the careful side; a time that the clock skipped counts from there too.
 */
export function outSince({ when, time }: Slipped, now: Instant, zone: Zone): OutSince {
  if (when.earliest === null) return null;
  const at = time === null || when.precision !== "day" ? null : instantAt(when.earliest, time, zone);
  const exact = at?.ok === true;
  const since = at?.ok === true ? at.value : startOfDay(when.earliest, zone);
  return { hours: Math.max(0, Math.floor((now - since) / HOUR_MS)), exact };
}
