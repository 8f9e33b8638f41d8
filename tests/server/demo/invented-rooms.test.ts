import { describe, expect, it } from "vitest";
import { inTransaction } from "#db/transaction.ts";
import { inventedRooms } from "#seed-demo/invented-rooms.ts";
import { openClinic } from "#server/clinic/open-clinic.ts";
import { roomsOf } from "#server/rooms/rooms-of.ts";
import { roomsStory } from "#server/rooms/rooms-story.ts";
import { roomForm } from "#shared/record/rooms/room-form.ts";
import { emptyDatabase, SEEDED_AT } from "#tests/support/database.ts";

const clinic = { name: "Quillmere Tube Clinic", zone: "Europe/London", phone: "", isDemo: true };

describe("the invented rooms", () => {
  it("stand in the clinic from its beginning, and nobody made them", () => {
    using db = emptyDatabase();
    inTransaction(db, (tx) => openClinic(tx, { ...clinic, rooms: inventedRooms }, SEEDED_AT));
    expect(roomsOf(db)).toEqual({ version: 1, rooms: inventedRooms });
    expect(roomsStory(db).versions).toMatchObject([{ version: 1, who: null }]);
  });

  it.each(inventedRooms.map((room) => [room.name, room] as const))(
    "%s is one that the form takes",
    (_, room) => {
      const { id: _id, ...entry } = room;
      expect(roomForm.read({}, { rooms: inventedRooms, changes: room })).toEqual({ ok: true, entry });
    },
  );
});
