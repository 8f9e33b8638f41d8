import { clinicOf } from "#db/queries/clinic.ts";
import { calendarHistory } from "#db/queries/version-story.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { calendarOf } from "#server/record/books.ts";
import { type CalendarChange, calendarChanges } from "#shared/day/calendar-change.ts";
import type { Instant } from "#shared/day/instant.ts";

/** The calendar that stands, and the clinic's day. Throws `no-pins`. */
export const viewCalendar = (db: Database) => ({
  calendar: viewProtocol(db).calendar,
  today: today(db),
});

type VersionLine = {
  readonly version: number;
  readonly at: Instant;
  /** Null of the first, which came with the clinic. */
  readonly who: string | null;
  /** What it took away and what it added to the version before it. */
  readonly changes: readonly CalendarChange[];
};

/** Every version of the calendar, the newest on top: what it added and took away, when, and by whom. */
export function calendarStory(db: Database) {
  const versions = calendarHistory(db).map(({ version, at, who }): VersionLine => {
    const before = version === 1 ? null : calendarOf(db, version - 1);
    const changes = before === null ? [] : calendarChanges(before, calendarOf(db, version));
    return { version, at, who, changes };
  });
  return { zone: clinicOf(db).zone, versions: versions.toReversed() };
}
