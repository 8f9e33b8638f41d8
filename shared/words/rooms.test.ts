import { expect, it } from "vitest";
import { roomsChanges } from "#shared/visit/rooms-change.ts";
import { roomsChangeWords } from "#shared/words/rooms.ts";
import { room } from "#tests/factories/visit.ts";

const said = (...versions: Parameters<typeof roomsChanges>) =>
  roomsChanges(...versions).map(roomsChangeWords);

it("what differs between the rooms of two versions is told room by room, what went away first", () => {
  const stays = room();
  const goes = room({ id: "room-2", name: "Room 2", can: [] });
  const comes = room({ id: "room-3", name: "Room 3", can: ["fluoroscopy", "CT"], reserve: 1 });
  expect(said([stays, goes], [{ ...stays, name: "Angio", reserve: 60 }, comes])).toEqual([
    "Taken away: Room 2. Can do: only what needs none of the list. Staffed: Monday to Friday 08:00 to 16:00. Kept free for urgent visits: nothing.",
    "Changed Room 1. Name: Angio; before, Room 1. Kept free for urgent visits: 60 minutes of each day; before, nothing.",
    "Added Room 3. Can do: fluoroscopy and CT. Staffed: Monday to Friday 08:00 to 16:00. Kept free for urgent visits: 1 minute of each day.",
  ]);
});

it("the order in which abilities and hours are kept is no change", () => {
  const one = room({ can: ["CT", "sedation"] });
  const other = { ...one, can: one.can.toReversed(), hours: one.hours.toReversed() };
  expect(roomsChanges([one], [other])).toEqual([]);
});
