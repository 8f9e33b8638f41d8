import { expect, it } from "vitest";
import { roomsSchema } from "#shared/visit/room-schema.ts";
import { minute, room } from "#tests/factories/visit.ts";

const on = (weekday: 1 | 2, from: string, to: string) => ({ weekday, from: minute(from), to: minute(to) });

it("stored rooms are read as they were written", () => {
  const rooms = [room(), room({ id: "room-2", name: "Room 2", can: [], hours: [on(2, "00:00", "24:00")] })];
  expect(roomsSchema.parse({ rooms })).toEqual({ rooms });
  expect(roomsSchema.parse({ rooms: [] })).toEqual({ rooms: [] });
});

it.each([
  ["two rooms of one id", [room(), room({ name: "Room 2" })]],
  ["two rooms of one name", [room(), room({ id: "room-2", name: "room  1" })]],
  ["a room without a name", [room({ name: " " })]],
  ["an ability twice", [room({ can: ["CT", "CT"] })]],
  ["hours that end before they begin", [room({ hours: [on(1, "17:00", "08:00")] })]],
  ["hours without length", [room({ hours: [on(1, "08:00", "08:00")] })]],
  ["hours past the end of the day", [room({ hours: [{ weekday: 1, from: 0, to: 1441 }] })]],
  ["hours that overlap on a weekday", [room({ hours: [on(1, "08:00", "12:00"), on(1, "11:59", "13:00")] })]],
  [
    "more times of a weekday than fit",
    [room({ hours: [0, 2, 4, 6, 8].map((from) => ({ weekday: 1, from, to: from + 1 })) })],
  ],
  ["a reserve below nothing", [room({ reserve: -1 })]],
])("%s are refused", (_, rooms) => {
  expect(roomsSchema.safeParse({ rooms }).success).toBe(false);
});

it("times that touch, or lie on two weekdays, do not overlap", () => {
  const hours = [on(1, "08:00", "12:00"), on(1, "12:00", "13:00"), on(2, "08:00", "12:00")];
  expect(roomsSchema.safeParse({ rooms: [room({ hours })] }).success).toBe(true);
});
