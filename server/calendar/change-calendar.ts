import { CALENDAR_COMMAND } from "#db/queries/version-story.ts";
import { addCalendarVersion } from "#db/queries/versions.ts";
import { inAct } from "#server/act.ts";
import { tablesSeen } from "#server/calendar/tables-seen.ts";
import { today } from "#server/clock.ts";
import { proposeEverywhere } from "#server/dates/propose-everywhere.ts";
import { calendarOf } from "#server/record/books.ts";
import type { Doing } from "#server/record/record-event.ts";
import { calendarChanges, inOrder } from "#shared/day/calendar-change.ts";
import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import type { Day } from "#shared/day/day.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { calendarAsked } from "#shared/record/calendar/asked.ts";
import type { ChangingCalendar, RestoringCalendar } from "#shared/record/calendar/asked-schema.ts";

/** One change of the calendar; the same act sent again changes nothing more. */
export type CalendarChanging = {
  readonly actId: string;
  /** The version that was seen. */
  readonly seen: number;
  /** What the act is kept as. */
  readonly input: unknown;
  /** The calendar that stands as it is to be from now on. Throws DomainError with what to mend. */
  readonly change: (calendar: ClinicCalendar, today: Day) => ClinicCalendar;
};

export type CalendarChanged = {
  /** The version that stands now; the one that was seen where nothing changed. */
  readonly version: number;
  readonly changed: boolean;
  /** Tubes of which a new date is proposed. Nothing has moved. */
  readonly tubes: number;
};

/**
 * Adds the next version of the calendar and proposes what it would move. Dates that stand keep their version until somebody confirms. A
 * change that changes nothing writes no version. Throws `calendar-changed` where another version came meanwhile.
 */
export function changeCalendar({ db, staff }: Doing, asked: CalendarChanging): CalendarChanged {
  const { actId, seen, input, change } = asked;
  return inAct({ db, staff, actId, command: CALENDAR_COMMAND, input }, (tx, at) => {
    const { protocol, calendar: stands } = tablesSeen(tx, seen);
    const calendar = inOrder({ ...change(stands, today(tx)), version: seen + 1 });
    if (calendarChanges(stands, calendar).length === 0) return { version: seen, changed: false, tubes: 0 };
    const { version, ...content } = calendar;
    addCalendarVersion(tx, { version, content, createdAt: at });
    return { version, changed: true, tubes: proposeEverywhere(tx, { protocol, calendar }) };
  });
}

/** What was typed or pressed. Throws every field to mend. */
export const askCalendar = (doing: Doing, { actId, seen, asked }: ChangingCalendar): CalendarChanged =>
  changeCalendar(doing, {
    actId,
    seen,
    input: { seen, asked },
    change: (calendar, on) => calendarAsked(asked, { calendar, today: on }),
  });

/** What stood in an earlier version stands again, as a version of its own. Throws `calendar-changed`. */
export const restoreCalendar = (doing: Doing, { actId, seen, version }: RestoringCalendar): CalendarChanged =>
  changeCalendar(doing, {
    actId,
    seen,
    input: { seen, version },
    change: () => {
      if (version >= seen) throw new DomainError({ code: "calendar-changed" });
      return calendarOf(doing.db, version);
    },
  });
