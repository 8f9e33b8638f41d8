import { printWhen } from "#shared/day/print-day.ts";
import { type Moment, soonToCome } from "#shared/day/read-when-at.ts";

/** Further off, a day of this year is not what somebody means who says that it happened. Practice, no source. */
const SOON_DAYS = 60;

/** A day that is still to come this year cannot have happened, so last year's is taken: said, for it may be a slip. */
export function lastYearsDay(text: string, moment: Moment): string | null {
  const coming = soonToCome(text, moment, SOON_DAYS);
  return coming === null ? null : `${printWhen(coming)} is still to come, so the year before was taken.`;
}
