import * as z from "zod";
import { nameKey } from "#shared/shelf/name-key.ts";
import { abilities, MOST_SPANS, ROOM_NAME_LIMIT, type Room } from "#shared/visit/room.ts";

const hoursSchema = z
  .strictObject({
    weekday: z.literal([1, 2, 3, 4, 5, 6, 7]),
    from: z.int().min(0).max(1440),
    to: z.int().min(0).max(1440),
  })
  .refine(({ from, to }) => from < to, { message: "hours-end-before-beginning", path: ["to"] });

type Hours = Room["hours"];

const overlap = (hours: Hours): boolean =>
  hours.some((one, at) =>
    hours
      .slice(at + 1)
      .some((other) => other.weekday === one.weekday && one.from < other.to && other.from < one.to),
  );

const mostOfADay = (hours: Hours): number =>
  Math.max(0, ...hours.map(({ weekday }) => hours.filter((one) => one.weekday === weekday).length));

const repeats = (words: readonly string[]): boolean => new Set(words).size < words.length;

export const roomSchema = z.strictObject({
  id: z.string().min(1).max(64),
  name: z.string().trim().min(1, "text-missing").max(ROOM_NAME_LIMIT),
  can: z
    .array(z.enum(abilities))
    .refine((can) => !repeats(can), "choice-repeated")
    .readonly(),
  hours: z
    .array(hoursSchema)
    .refine((hours) => !overlap(hours), "hours-overlap")
    .refine((hours) => mostOfADay(hours) <= MOST_SPANS, "hours-too-many")
    .readonly(),
  reserve: z.int().min(0).max(1440),
});

/** The rooms of a clinic as they are stored, in the clinic's own order: no two have one id or one name. */
export const roomsSchema = z.strictObject({
  rooms: z
    .array(roomSchema)
    .refine((rooms) => !repeats(rooms.map(({ id }) => id)), "choice-repeated")
    .refine((rooms) => !repeats(rooms.map(({ name }) => nameKey(name))), "room-name-taken")
    .readonly(),
});
