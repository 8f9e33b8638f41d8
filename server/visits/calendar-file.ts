import ical, { ICalCalendarMethod, ICalEventStatus } from "ical-generator";
import type { Instant } from "#shared/day/instant.ts";

/** A visit as a calendar outside shows it: nothing of whose visit it is. */
export type CalendarVisit = {
  /** Opaque and stable: the same through every move, never a number of the patient. Letters, digits, `-` and `_`. */
  readonly id: string;
  /** Rises by one or more with each move, change and cancellation; by it a calendar knows which of two is newer. */
  readonly revision: number;
  /** The room's name, or where else it was booked. */
  readonly where: string;
  readonly start: Instant;
  readonly minutes: number;
  /** "exchange, 2 tubes". */
  readonly acts: string;
  readonly cancelled: boolean;
  readonly changedAt: Instant;
};

const MINUTE_MS = 60_000;
const OPAQUE = /^[\w-]+$/;

/** Throws RangeError on an id that could end the line it stands in. */
function uidOf(id: string): string {
  if (!OPAQUE.test(id)) throw new RangeError(`not an opaque id: ${JSON.stringify(id)}`);
  return `${id}@dwellbook`;
}

const inOrder = (a: CalendarVisit, b: CalendarVisit): number =>
  a.start - b.start || (a.id < b.id ? -1 : Number(a.id > b.id));

function eventOf(
  { id, revision, where, start, minutes, acts, cancelled, changedAt }: CalendarVisit,
  at: Instant,
) {
  return {
    id: uidOf(id),
    sequence: revision,
    stamp: new Date(at),
    lastModified: new Date(changedAt),
    start: new Date(start),
    end: new Date(start + minutes * MINUTE_MS),
    // Many calendars show a cancelled event as if it stood.
    summary: cancelled ? `Cancelled: ${acts}` : acts,
    location: where,
    status: cancelled ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
  };
}

/**
 * Visits as one calendar file (RFC 5545), as it is at a moment, in order of time; the order in which they come changes nothing. Times are
 * in UTC: each visit is one moment and none recurs, so that a zone would add rules which may be wrong on the other side and tell nothing. A
 * cancelled visit stays in, with its UID, so that it is taken out of a calendar that has it. At least one visit: the standard knows no
 * calendar without a part. Throws RangeError on an id with other signs than letters, digits, `-` and `_`.
 */
export function calendarFile(visits: readonly [CalendarVisit, ...CalendarVisit[]], at: Instant): string {
  const calendar = ical({
    prodId: "//Dwellbook//Booked visits//EN",
    method: ICalCalendarMethod.PUBLISH,
    events: visits.toSorted(inOrder).map((visit) => eventOf(visit, at)),
  });
  // The library leaves the last line open; the standard ends every line (RFC 5545, 3.1).
  return `${calendar.toString()}\r\n`;
}
