import { countOpenProposals } from "#db/queries/proposals.ts";
import type { Database } from "#db/sqlite.ts";
import { tablesSeen } from "#server/calendar/tables-seen.ts";
import { today } from "#server/clock.ts";
import { type Impact, impactOf } from "#server/dates/impact.ts";
import { type LostSlot, lostSlots } from "#server/visits/lost-slots.ts";
import { type CalendarChange, calendarChanges } from "#shared/day/calendar-change.ts";
import { calendarAsked } from "#shared/record/calendar/asked.ts";
import type { PreviewingCalendar } from "#shared/record/calendar/asked-schema.ts";

/** What a change would do if it were made now: what differs, and whom it touches. */
export type CalendarPreview = Impact & {
  readonly changes: readonly CalendarChange[];
  /** Booked visits that would stand where none can be booked any more. */
  readonly lost: readonly LostSlot[];
  /** Dates that wait to be confirmed already, by earlier changes: what of them still moves is counted again. */
  readonly waiting: number;
};

/** Writes nothing; the counts are those of what making it then proposes. Throws every field to mend, and `calendar-changed`. */
export function previewCalendar(db: Database, { seen, asked, page }: PreviewingCalendar): CalendarPreview {
  const { protocol, calendar: stands } = tablesSeen(db, seen);
  const calendar = {
    ...calendarAsked(asked, { calendar: stands, today: today(db) }),
    version: seen + 1,
  };
  const impact = impactOf(db, { protocol, calendar }, page);
  return {
    ...impact,
    changes: calendarChanges(stands, calendar),
    lost: lostSlots(db, { calendar }),
    waiting: countOpenProposals(db),
  };
}
