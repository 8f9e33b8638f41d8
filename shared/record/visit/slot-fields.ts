import type { Day } from "#shared/day/day.ts";
import { type Parsed, parsed, type Refusal, unread } from "#shared/errors/refusal.ts";
import { comingDayField } from "#shared/record/field/day-field.ts";
import { minuteField } from "#shared/record/field/minute-field.ts";
import { lineField } from "#shared/record/field/text-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import type { Minute, Room } from "#shared/visit/room.ts";
import type { VisitPlace } from "#shared/visit/visit.ts";

/** What a form about a visit is read beside. */
export type VisitContext = {
  readonly today: Day;
  /** The clinic's rooms, in its own order. */
  readonly rooms: readonly Pick<Room, "id" | "name">[];
  /** What the rows say that it takes; null where they cannot tell, so that the minutes are typed. */
  readonly minutes: number | null;
};

const MINUTES_A_DAY = 1440;

/** Whole minutes that a visit takes; blank goes by the rows. */
const lengthField = ({ minutes }: VisitContext): FieldSpec<number | null> => ({
  label: "Minutes",
  hint: minutes === null ? "no row says how many: type them" : `blank: ${minutes}, by the rows`,
  read: (text): Parsed<number | null> => {
    const typed = text.trim();
    if (typed === "") return parsed(null);
    const value = /^\d{1,4}$/.test(typed) ? Number(typed) : 0;
    return value >= 1 && value <= MINUTES_A_DAY
      ? parsed(value)
      : unread("visit-minutes-not-understood", { text: typed });
  },
  echo: (value) => (value === null ? "" : `${value} min`),
});

/** A room by its name; blank: none of ours. */
const roomField = ({ rooms }: VisitContext): FieldSpec<string | null> => ({
  label: "Room",
  choices: [{ value: "", label: "Choose" }, ...rooms.map(({ name }) => ({ value: name, label: name }))],
  read: (text) => {
    const typed = text.trim().toLowerCase();
    if (typed === "") return parsed(null);
    const found = rooms.find(({ name }) => name.toLowerCase() === typed);
    return found === undefined ? unread("choice-unknown", { text: text.trim() }) : parsed(found.id);
  },
});

/** Where and when a visit is, as it is typed. */
export const slotFields = (context: VisitContext) => ({
  on: comingDayField({ label: "Day", what: "the day of the visit" }, context),
  at: minuteField({ label: "From" }),
  room: roomField(context),
  minutes: lengthField(context),
  elsewhere: lineField({
    label: "Booked elsewhere",
    hint: "where: the hospital's own booking, another clinic",
    detail: true,
  }),
});

export type SlotTyped = {
  readonly on: Day;
  readonly at: Minute | null;
  readonly room: string | null;
  readonly minutes: number | null;
  readonly elsewhere: string | null;
};

/** What the place says against itself, or does not say. */
export function slotRefusals({ at, room, minutes, elsewhere }: SlotTyped, context: VisitContext): Refusal[] {
  if (elsewhere !== null) return room === null ? [] : [{ code: "visit-in-two-places", field: "elsewhere" }];
  const missing: Refusal[] = [];
  if (at === null)
    missing.push({ code: "text-missing", field: "at", args: { what: "the time of the visit" } });
  if (room === null) missing.push({ code: "visit-without-place", field: "room" });
  if ((minutes ?? context.minutes) === null)
    missing.push({ code: "visit-minutes-unknown", field: "minutes" });
  return missing;
}

/** The place that was typed; only once nothing stands against it. */
export function placeOf({ at, room, minutes, elsewhere }: SlotTyped, context: VisitContext): VisitPlace {
  if (elsewhere !== null || room === null || at === null)
    return { kind: "elsewhere", where: elsewhere ?? "", from: at };
  return { kind: "here", roomId: room, from: at, minutes: minutes ?? context.minutes ?? 0 };
}
