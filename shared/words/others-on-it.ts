import { clockText, dayAt, type Instant, type Zone } from "#shared/day/instant.ts";
import { printInstant } from "#shared/day/print-day.ts";

const MINUTE_MS = 60_000;
const HOUR = 60;

export type Looking = { readonly now: Instant; readonly zone: Zone };

/** "at 10:12", and on another day which. */
const atClock = (at: Instant, { now, zone }: Looking): string =>
  dayAt(at, zone) === dayAt(now, zone) ? `at ${clockText(at, zone)}` : `on ${printInstant(at, zone)}`;

/** "just now", "4 minutes ago", "at 10:12", "on Fri 6 Nov 2026, 22:10". */
export function agoWords(at: Instant, looking: Looking): string {
  const minutes = Math.floor((looking.now - at) / MINUTE_MS);
  if (minutes < 1) return "just now";
  if (minutes === 1) return "a minute ago";
  return minutes < HOUR ? `${minutes} minutes ago` : atClock(at, looking);
}

/** "Petra Physick opened this review 4 minutes ago." */
export const openedSentence = (who: string, at: Instant, looking: Looking): string =>
  `${who} opened this review ${agoWords(at, looking)}.`;

/** "Petra Physick decided at 10:12." */
export const decidedSentence = (who: string, at: Instant, looking: Looking): string =>
  `${who} decided ${atClock(at, looking)}.`;
