import { type ClinicCalendar, type DayHalf, type ShutBecause, whyShut } from "#shared/day/clinic-days.ts";
import { addDays, type Day, type Weekday, weekdayOf } from "#shared/day/day.ts";
import type { SlotQuestion } from "#shared/visit/offers.ts";
import type { Ability, Minute, Room, Span } from "#shared/visit/room.ts";

/** One thing that could be otherwise, by which a day would have a slot. */
export type Change =
  | { readonly code: "patient-comes"; readonly weekday: Weekday; readonly half: DayHalf | null }
  | { readonly code: "ready-sooner"; readonly on: Day; readonly at: Minute }
  | { readonly code: "whole-day"; readonly on: Day; readonly reason: string }
  | { readonly code: "clinic-opens"; readonly on: Day; readonly because: ShutBecause }
  | { readonly code: "visit-moves"; readonly bookingId: string; readonly roomId: string }
  | { readonly code: "room-could"; readonly roomId: string; readonly lacks: readonly Ability[] }
  | {
      readonly code: "room-staffed";
      readonly roomId: string;
      readonly weekday: Weekday;
      readonly hours: Span;
    };

/** The closures without one day of them. */
function openedOn(on: Day, calendar: ClinicCalendar): ClinicCalendar {
  const weekday = weekdayOf(on);
  const closures = calendar.closures.flatMap((closure) => {
    if (on < closure.from || closure.to < on) return [closure];
    return [
      { ...closure, to: addDays(on, -1) },
      { ...closure, from: addDays(on, 1) },
    ].filter(({ from, to }) => from <= to);
  });
  const openWeekdays = calendar.openWeekdays.includes(weekday)
    ? calendar.openWeekdays
    : [...calendar.openWeekdays, weekday];
  return { ...calendar, closures, openWeekdays };
}

const withRoom = (question: SlotQuestion, roomId: string, change: (room: Room) => Room): SlotQuestion => {
  const rooms = question.clinic.rooms.map((room) => (room.id === roomId ? change(room) : room));
  return { ...question, clinic: { ...question.clinic, rooms } };
};

const withCalendar = (question: SlotQuestion, calendar: ClinicCalendar): SlotQuestion => ({
  ...question,
  clinic: { ...question.clinic, calendar },
});

/** The same question in a clinic, or of a patient, where that one thing is otherwise. */
export function changed(question: SlotQuestion, change: Change): SlotQuestion {
  const { clinic, asked } = question;
  switch (change.code) {
    case "patient-comes": {
      const notOn = asked.notOn.filter(
        ({ weekday, half }) => weekday !== change.weekday || half !== change.half,
      );
      return { ...question, asked: { ...asked, notOn } };
    }
    case "ready-sooner":
      return { ...question, asked: { ...asked, readyFrom: null } };
    case "whole-day": {
      const halfDays = (clinic.calendar.halfDays ?? []).filter(({ on }) => on !== change.on);
      return withCalendar(question, { ...clinic.calendar, halfDays });
    }
    case "clinic-opens":
      return withCalendar(question, openedOn(change.on, clinic.calendar));
    case "visit-moves": {
      const booked = clinic.booked.filter(({ id }) => id !== change.bookingId);
      return { ...question, clinic: { ...clinic, booked } };
    }
    case "room-could":
      return withRoom(question, change.roomId, (room) => ({ ...room, can: [...room.can, ...change.lacks] }));
    case "room-staffed": {
      const { weekday, hours } = change;
      return withRoom(question, change.roomId, (room) => ({
        ...room,
        hours: [...room.hours.filter((own) => own.weekday !== weekday), { weekday, ...hours }],
      }));
    }
  }
}

/** What a day that nobody staffs could have: the room's longest hours of another weekday. */
function usualHours({ hours }: Room): Span | null {
  const [longest] = hours.toSorted((a, b) => b.to - b.from - (a.to - a.from));
  return longest === undefined ? null : { from: longest.from, to: longest.to };
}

function ofRoom(room: Room, on: Day, { clinic, asked }: SlotQuestion): Change[] {
  const lacks = asked.needs.filter((need) => !room.can.includes(need));
  const weekday = weekdayOf(on);
  const hours = usualHours(room);
  const moves = clinic.booked
    .filter((one) => one.roomId === room.id && one.on === on)
    .toSorted((a, b) => a.from - b.from || (a.id < b.id ? -1 : 1))
    .map(({ id }): Change => ({ code: "visit-moves", bookingId: id, roomId: room.id }));
  return [
    ...moves,
    ...(lacks.length > 0 ? [{ code: "room-could", roomId: room.id, lacks } as const] : []),
    ...(hours === null ? [] : [{ code: "room-staffed", roomId: room.id, weekday, hours } as const]),
  ];
}

/** Everything that could be otherwise about one day, the least of it first: the patient's own, the clinic's, then each room's. */
export function changesFor(on: Day, question: SlotQuestion): Change[] {
  const { clinic, asked } = question;
  const weekday = weekdayOf(on);
  const own = asked.notOn
    .filter((one) => one.weekday === weekday)
    .map((one): Change => ({ code: "patient-comes", ...one }));
  const { readyFrom } = asked;
  const ready: Change[] =
    readyFrom !== null && on <= readyFrom.on ? [{ code: "ready-sooner", ...readyFrom }] : [];
  const half = (clinic.calendar.halfDays ?? []).find((halved) => halved.on === on);
  const whole: Change[] = half === undefined ? [] : [{ code: "whole-day", on, reason: half.reason }];
  const because = whyShut(on, clinic.calendar);
  const opens: Change[] = because === null ? [] : [{ code: "clinic-opens", on, because }];
  return [
    ...own,
    ...ready,
    ...whole,
    ...opens,
    ...clinic.rooms.flatMap((room) => ofRoom(room, on, question)),
  ];
}
