import ical, { ICalCalendarMethod, ICalEventStatus } from "ical-generator";
import type { Day } from "#shared/day/day.ts";
import type { Instant } from "#shared/day/instant.ts";

/** A visit as a calendar outside shows it: nothing of whose visit it is. */
export type CalendarVisit = {
  /** Opaque and stable: the same through every move, never a number of the patient. Letters, digits, `-` and `_`. */
  readonly id: string;
  /** Never falls and rises with each move, change and cancellation; by it a calendar knows which of two is newer. */
  readonly revision: number;
  /** The room's name; of one elsewhere no name that somebody typed. */
  readonly where: string;
  /** A moment and for how long, where that is known, or a day whose time is not. */
  readonly when:
    | { readonly kind: "from"; readonly start: Instant; readonly minutes: number | null }
    | { readonly kind: "day"; readonly on: Day };
  /** "exchange, 2 tubes". */
  readonly acts: string;
  readonly stands: "proposed" | "booked" | "cancelled";
  readonly changedAt: Instant;
};

const MINUTE_MS = 60_000;
const OPAQUE = /^[\w-]+$/;

/** Throws RangeError on an id that could end the line it stands in. */
function uidOf(id: string): string {
  if (!OPAQUE.test(id)) throw new RangeError(`not an opaque id: ${JSON.stringify(id)}`);
  return `${id}@dwellbook`;
}

/** Of a day, its first moment in UTC: the same on every machine, and a date alone is written of it. */
const dateOf = (on: Day): Date => new Date(`${on}T00:00:00Z`);

const startOf = ({ when }: CalendarVisit): number =>
  when.kind === "from" ? when.start : dateOf(when.on).getTime();

const inOrder = (a: CalendarVisit, b: CalendarVisit): number =>
  startOf(a) - startOf(b) || (a.id < b.id ? -1 : Number(a.id > b.id));

function timeOf({ when }: CalendarVisit) {
  if (when.kind === "day") return { start: dateOf(when.on), allDay: true };
  const { start, minutes } = when;
  return {
    start: new Date(start),
    ...(minutes === null ? {} : { end: new Date(start + minutes * MINUTE_MS) }),
  };
}

/** Many calendars show a cancelled event, and one that nobody has agreed to, as if it stood: the words say so too. */
const standing = {
  proposed: { says: "Proposed: ", status: ICalEventStatus.TENTATIVE },
  booked: { says: "", status: ICalEventStatus.CONFIRMED },
  cancelled: { says: "Cancelled: ", status: ICalEventStatus.CANCELLED },
} as const;

function eventOf(visit: CalendarVisit, at: Instant) {
  const { id, revision, where, acts, stands, changedAt } = visit;
  const { says, status } = standing[stands];
  return {
    id: uidOf(id),
    sequence: revision,
    stamp: new Date(at),
    lastModified: new Date(changedAt),
    ...timeOf(visit),
    summary: `${says}${acts}`,
    location: where,
    status,
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
