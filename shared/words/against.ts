import { type ClinicCalendar, type ShutBecause, whyShut } from "#shared/day/clinic-days.ts";
import { printDay, weekdayNames } from "#shared/day/print-day.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { printNotOn } from "#shared/record/field/not-on-field.ts";
import type { Against, Clinic, Slot } from "#shared/visit/may-book.ts";
import { openSpans, type Room } from "#shared/visit/room.ts";
import { printMinute, type VisitNames } from "#shared/words/offers.ts";

const shutWords = (because: ShutBecause): string =>
  because.code === "closure" ? because.reason : `not open on ${weekdayNames[because.weekday - 1] ?? ""}s`;

/** "08:00 to 12:00, 13:00 to 16:00"; "not on Wed 11 Nov 2026". */
function staffedWords(room: Room | undefined, { on }: Slot, calendar: ClinicCalendar): string {
  const spans = room === undefined ? [] : openSpans(room, on, calendar);
  if (spans.length === 0) return `not on ${printDay(on)}`;
  return spans.map(({ from, to }) => `${printMinute(from)} to ${printMinute(to)}`).join(", ");
}

type Beside = { readonly clinic: Clinic; readonly names: VisitNames };

/** What stands against a slot that was typed or picked, beside the field that would have to be otherwise. */
export function againstRefusal(against: Against, slot: Slot, { clinic, names }: Beside): Refusal {
  const room = names.room(slot.roomId);
  switch (against.code) {
    case "past":
      return {
        code: "slot-past",
        field: "on",
        args: { slot: `${printDay(slot.on)}, ${printMinute(slot.from)},` },
      };
    case "room-unknown":
      return { code: "slot-room-unknown", field: "room" };
    case "clinic-shut":
      return {
        code: "slot-shut",
        field: "on",
        args: { slot: printDay(slot.on), because: shutWords(against.because) },
      };
    case "room-not-staffed": {
      const own = clinic.rooms.find(({ id }) => id === slot.roomId);
      return {
        code: "slot-not-staffed",
        field: "at",
        args: { room, hours: staffedWords(own, slot, clinic.calendar) },
      };
    }
    case "room-cannot":
      return { code: "slot-room-cannot", field: "room", args: { room, lacks: against.lacks.join(" and ") } };
    case "room-taken":
      return {
        code: "slot-taken",
        field: "at",
        args: { room, by: against.by.map((id) => names.visit(id)).join(", ") },
      };
    case "patient-cannot":
      return { code: "slot-patient-cannot", field: "on", args: { when: printNotOn([against]) } };
    case "not-ready":
      return {
        code: "slot-not-ready",
        field: "on",
        args: { when: `${printDay(against.on)}, ${printMinute(against.at)}` },
      };
  }
}

/** Why the clinic is shut on a day, in words; null where it is open. */
export function shutOn(on: Slot["on"], calendar: ClinicCalendar): string | null {
  const because = whyShut(on, calendar);
  return because === null ? null : shutWords(because);
}
