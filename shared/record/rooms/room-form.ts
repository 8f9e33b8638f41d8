import { weekdayNames } from "#shared/day/print-day.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { hoursField } from "#shared/record/field/hours-field.ts";
import { wordsFor } from "#shared/record/field/match-word.ts";
import { minutesField } from "#shared/record/field/minutes-field.ts";
import { filledField } from "#shared/record/field/text-field.ts";
import { wordsField } from "#shared/record/field/words-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { form } from "#shared/record/form.ts";
import { nameKey } from "#shared/shelf/name-key.ts";
import { type Ability, abilities, minutesOf, ROOM_NAME_LIMIT, type Room } from "#shared/visit/room.ts";
import { hoursTyped } from "#shared/words/hours.ts";
import { canWords, reserveWords } from "#shared/words/rooms.ts";

/** Beside which rooms one is read; `changes` is the one that it takes the place of, null for a new one. */
export type RoomContext = { readonly rooms: readonly Room[]; readonly changes: Room | null };

/** A room without the id that the server gives it. */
export type RoomSaid = Omit<Room, "id">;

const abilityWords = wordsFor<Ability>({
  fluoroscopy: ["fluoro", "x-ray"],
  ultrasound: ["us", "sonography"],
  CT: ["computed tomography"],
  sedation: [],
  anesthesia: ["anaesthesia", "general anesthesia"],
  isolation: [],
});

/** In the order of the list, so that the order of typing says nothing. Blank is none of them. */
function canField(words: FieldWords): FieldSpec<readonly Ability[]> {
  const { read } = wordsField(words, abilityWords);
  return {
    ...words,
    read: (text) => {
      const found = read(text);
      if (!found.ok) return found;
      return { ok: true, value: abilities.filter((ability) => found.value?.includes(ability)) };
    },
    echo: canWords,
  };
}

type Staffed = { readonly weekday: string; readonly minutes: number };

/** The weekday on which a room is staffed for the fewest minutes; null for a room without hours. */
function shortestDay(hours: Room["hours"]): Staffed | null {
  const days = weekdayNames.flatMap((weekday, at) => {
    const minutes = minutesOf(hours.filter((span) => span.weekday === at + 1));
    return minutes === 0 ? [] : [{ weekday, minutes }];
  });
  return days.toSorted((a, b) => a.minutes - b.minutes)[0] ?? null;
}

/** Why a room cannot stand beside the others, or nothing. */
function roomRefusals(
  { name, hours, reserve }: RoomSaid,
  { rooms, changes }: RoomContext,
): readonly Refusal[] {
  const refusals: Refusal[] = [];
  const taken = rooms.find((room) => room.id !== changes?.id && nameKey(room.name) === nameKey(name));
  if (taken !== undefined)
    refusals.push({ code: "room-name-taken", field: "name", args: { name: taken.name } });
  const shortest = shortestDay(hours);
  if (shortest !== null && reserve > shortest.minutes)
    refusals.push({ code: "reserve-over-day", field: "reserve", args: { reserve, ...shortest } });
  return refusals;
}

/** One room: what it is called, what it can do, when it is staffed, what of each day stays free for what is urgent. */
export const roomForm = form<RoomSaid, RoomSaid, RoomContext>({
  fields: ({ changes }) => ({
    name: filledField(
      { label: "Name", hint: "Room 1", initial: changes?.name ?? "" },
      "the name of the room",
      ROOM_NAME_LIMIT,
    ),
    can: canField({
      label: "What it can do",
      hint: `${abilities.join(", ")}; blank: none of these`,
      initial: changes?.can.join(", ") ?? "",
    }),
    hours: hoursField({
      label: "Staffed",
      hint: "mon-thu 8-16:30, fri 8-12, 13-15",
      initial: changes === null ? "" : hoursTyped(changes.hours),
    }),
    reserve: minutesField(
      {
        label: "Kept free for urgent visits, minutes a day",
        hint: "60, 1 h; blank: none",
        initial: changes === null || changes.reserve === 0 ? "" : String(changes.reserve),
      },
      reserveWords,
    ),
  }),
  check: roomRefusals,
  entry: (room) => room,
});
