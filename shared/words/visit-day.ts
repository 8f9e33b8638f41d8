import type { HalfDay } from "#shared/day/clinic-days.ts";
import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { minutesOf, type Room, type Span } from "#shared/visit/room.ts";
import type { ToSettle } from "#shared/visit/to-settle.ts";
import type { Visit, VisitPlace } from "#shared/visit/visit.ts";
import { printMinute } from "#shared/words/offers.ts";
import { visitStateWords } from "#shared/words/visit-events.ts";

/** "10:00 to 11:30". */
export const spanWords = ({ from, to }: Span): string => `${printMinute(from)} to ${printMinute(to)}`;

/** "09:30 to 10:10"; of a visit elsewhere when it begins, where that is known. */
export function visitTime(place: VisitPlace): string {
  if (place.from === null) return "time not known";
  return place.kind === "here"
    ? spanWords({ from: place.from, to: place.from + place.minutes })
    : printMinute(place.from);
}

/** How a visit stands, and who said why, where somebody did: "cancelled by the ward: fever". */
export function visitStands({ state, by, reason }: Pick<Visit, "state" | "by" | "reason">): string {
  const who = by === null ? "" : ` by ${by}`;
  return `${visitStateWords[state]}${who}${reason === null ? "" : `: ${reason}`}`;
}

/** "3 to settle, the first by Thu 12 Nov 2026", or was due on a day that has passed; null where nothing is open. */
export function toSettleWords({ things, by }: ToSettle, today: Day): string | null {
  if (things.length === 0) return null;
  const many = `${things.length} to settle`;
  if (by === null) return many;
  const first = things.length === 1 ? "" : ", the first";
  return `${many}${first} ${by < today ? "was due on" : "by"} ${printDay(by)}`;
}

export const countWords = (visits: number): string =>
  visits === 0 ? "no visit" : `${visits} ${visits === 1 ? "visit" : "visits"}`;

/** What of a room's day is kept for what is urgent, beside what is free: whether all of it is still there. */
function keptWords(left: number, reserve: number): string {
  if (reserve === 0) return "";
  return left < reserve
    ? `, less than the ${reserve} min kept for urgent visits`
    : `, ${reserve} of them kept for urgent visits`;
}

type RoomDay = {
  readonly room: Pick<Room, "reserve">;
  readonly spans: readonly Span[];
  readonly free: readonly Span[];
  readonly visits: readonly unknown[];
};

/** "4 visits; staffed 08:00 to 16:00; 210 min free, 60 of them kept for urgent visits". Of a past day nothing is free any more. */
export function roomDayWords({ room, spans, free, visits }: RoomDay, isPast: boolean): string {
  const staffed = spans.length === 0 ? "not staffed" : `staffed ${spans.map(spanWords).join(", ")}`;
  const left = minutesOf(free);
  const open = isPast || spans.length === 0 ? [] : [`${left} min free${keptWords(left, room.reserve)}`];
  return [countWords(visits.length), staffed, ...open].join("; ");
}

/** "Open in the morning only: stocktaking." */
export const halfDayWords = ({ open, reason }: HalfDay): string => `Open in the ${open} only: ${reason}.`;
