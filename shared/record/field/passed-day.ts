import type { Day } from "#shared/day/day.ts";
import { printDistance } from "#shared/day/print-day.ts";

/** A day for which something is planned may have passed, where an entry is late or was overdue when it was typed: asked, not refused. */
export const passedDay = (day: Day | null, today: Day): string | null =>
  day === null || day >= today ? null : `That was ${printDistance(day, today)}: is it the day that is meant?`;
