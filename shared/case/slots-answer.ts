import type { Given } from "#shared/case/case-schema.ts";
import type { Json } from "#shared/case/json.ts";
import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import type { Change } from "#shared/visit/change.ts";
import type { SlotQuestion } from "#shared/visit/offers.ts";
import type { Booking, Minute, Room } from "#shared/visit/room.ts";
import { offers, type Sooner } from "#shared/visit/sooner.ts";
import { jointWindow } from "#shared/visit/window.ts";
import { printMinute, soonerWords, type VisitNames } from "#shared/words/offers.ts";

/** "09:30"; the schema lets no other text by. */
const minuteOf = (clock: string): Minute => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5));

const roomOf = ({ name, can, hours, reserve }: Given<"slots">["rooms"][number]): Room => ({
  id: name,
  name,
  can,
  reserve,
  hours: hours.flatMap(({ weekdays, from, to }) =>
    weekdays.map((weekday) => ({ weekday, from: minuteOf(from), to: minuteOf(to) })),
  ),
});

const bookingOf = ({ room, on, from, minutes, whose }: Given<"slots">["booked"][number]): Booking => ({
  id: whose,
  roomId: room,
  on,
  from: minuteOf(from),
  minutes,
});

function questionOf(given: Given<"slots">): SlotQuestion {
  const { now, calendar, rooms, booked, windows, visit, urgent, days } = given;
  const { minutes, needs, notOn, readyFrom } = visit;
  const of: ClinicCalendar = { version: 1, ...calendar };
  return {
    window: jointWindow(
      Object.entries(windows).map(([tubeId, { earliest, target, latest }]) => ({
        tubeId,
        window: { earliest, target, latest },
      })),
    ),
    urgent,
    days,
    clinic: {
      calendar: of,
      rooms: rooms.map(roomOf),
      booked: booked.map(bookingOf),
      now: { on: now.on, at: minuteOf(now.at) },
    },
    asked: {
      minutes,
      needs,
      notOn,
      readyFrom: readyFrom === null ? null : { on: readyFrom.on, at: minuteOf(readyFrom.at) },
    },
  };
}

/** Rooms and visits of a case are named by the case itself. */
const names: VisitNames = { room: (id) => id, visit: (id) => id };

const changeAnswer = ({ code }: Change): Json => code;

function soonerAnswer(sooner: Sooner): Json {
  const says = soonerWords(sooner, names);
  if (sooner.kind === "blocked")
    return { kind: sooner.kind, on: sooner.on, change: changeAnswer(sooner.change), says };
  if (sooner.kind === "free") return { kind: sooner.kind, on: sooner.slot.on, behind: sooner.behind, says };
  if (sooner.kind === "offered") return { kind: sooner.kind, on: sooner.slot.on, says };
  return { kind: sooner.kind, says };
}

/** The window of the visit, and the three slots in their order, each with what it stands on and why not sooner. */
export function slotsAnswer(given: Given<"slots">): Json {
  const question = questionOf(given);
  const { earliest, target, latest, latestOf, early } = question.window;
  return {
    window: { earliest, target, latest, latestOf, early },
    offers: offers(question).map(({ slot, place, takesReserve, left, sooner }) => ({
      on: slot.on,
      from: printMinute(slot.from),
      room: slot.roomId,
      place,
      takesReserve,
      left,
      sooner: soonerAnswer(sooner),
    })),
  };
}
