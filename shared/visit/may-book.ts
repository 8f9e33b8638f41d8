import { type ClinicCalendar, type DayHalf, type ShutBecause, whyShut } from "#shared/day/clinic-days.ts";
import { type Day, type Weekday, weekdayOf } from "#shared/day/day.ts";
import {
  type Ability,
  type Booking,
  endOf,
  halfOf,
  type Minute,
  openSpans,
  type Room,
} from "#shared/visit/room.ts";

/** A room on a day from a minute on, for so many minutes. */
export type Slot = Omit<Booking, "id">;

/** What of the clinic decides whether a visit can stand in a slot. */
export type Clinic = {
  readonly calendar: ClinicCalendar;
  readonly rooms: readonly Room[];
  /** Visits that take room now; not the one that is to be moved. */
  readonly booked: readonly Booking[];
  /** Now, by the clinic's clock. */
  readonly now: { readonly on: Day; readonly at: Minute };
};

/** What of the visit does. */
export type Asked = {
  readonly minutes: number;
  readonly needs: readonly Ability[];
  /** Days and halves on which the patient cannot come: dialysis, chemotherapy, an escort who works. */
  readonly notOn: readonly { readonly weekday: Weekday; readonly half: DayHalf | null }[];
  /** Nothing before this, such as a premedication that takes its time; null where nothing is waited for. */
  readonly readyFrom: { readonly on: Day; readonly at: Minute } | null;
};

/** The one thing that stands against a slot, by which it would be free if it were otherwise. */
export type Against =
  | { readonly code: "past" }
  | { readonly code: "room-unknown" }
  | { readonly code: "clinic-shut"; readonly because: ShutBecause }
  | { readonly code: "room-not-staffed" }
  | { readonly code: "room-cannot"; readonly lacks: readonly Ability[] }
  | { readonly code: "room-taken"; readonly by: readonly string[] }
  | { readonly code: "patient-cannot"; readonly weekday: Weekday; readonly half: DayHalf | null }
  | { readonly code: "not-ready"; readonly on: Day; readonly at: Minute };

type Moment = { readonly on: Day; readonly at: Minute };
const isBefore = (a: Moment, b: Moment): boolean => (a.on === b.on ? a.at < b.at : a.on < b.on);

const overlaps = (a: Slot, b: Slot): boolean =>
  a.roomId === b.roomId && a.on === b.on && a.from < endOf(b) && b.from < endOf(a);

function againstRoom(slot: Slot, { needs }: Asked, { rooms, calendar, booked }: Clinic): Against[] {
  const room = rooms.find(({ id }) => id === slot.roomId);
  if (room === undefined) return [{ code: "room-unknown" }];
  const found: Against[] = [];
  const staffed = openSpans(room, slot.on, calendar);
  if (!staffed.some(({ from, to }) => from <= slot.from && endOf(slot) <= to))
    found.push({ code: "room-not-staffed" });
  const lacks = needs.filter((need) => !room.can.includes(need));
  if (lacks.length > 0) found.push({ code: "room-cannot", lacks });
  const by = booked.filter((other) => overlaps(slot, other)).map(({ id }) => id);
  if (by.length > 0) found.push({ code: "room-taken", by });
  return found;
}

/** All that stands against a visit in a slot; nothing where it may be booked. A visit that takes no whole minute may not. */
export function allAgainst(slot: Slot, asked: Asked, clinic: Clinic): Against[] {
  const at = { on: slot.on, at: slot.from };
  const found: Against[] = [];
  if (isBefore(at, clinic.now)) found.push({ code: "past" });
  const because = whyShut(slot.on, clinic.calendar);
  if (because !== null) found.push({ code: "clinic-shut", because });
  else found.push(...againstRoom(slot, asked, clinic));
  const weekday = weekdayOf(slot.on);
  const cannot = asked.notOn.find(
    (one) => one.weekday === weekday && (one.half === null || one.half === halfOf(slot.from)),
  );
  if (cannot !== undefined) found.push({ code: "patient-cannot", ...cannot });
  const { readyFrom } = asked;
  if (readyFrom !== null && isBefore(at, readyFrom)) found.push({ code: "not-ready", ...readyFrom });
  return found;
}

/** Whether a visit may stand in a slot: no closure, no other visit, no need of it is broken. */
export const mayBook = (slot: Slot, asked: Asked, clinic: Clinic): boolean =>
  allAgainst(slot, asked, clinic).length === 0;
