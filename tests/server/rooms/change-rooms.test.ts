import { describe, expect, it } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { askRooms, restoreRooms } from "#server/rooms/change-rooms.ts";
import { roomsIn, roomsOf } from "#server/rooms/rooms-of.ts";
import { roomsStory } from "#server/rooms/rooms-story.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { RoomsAsked } from "#shared/record/rooms/asked.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

const lead = (db: Database) => ({ db, staff: people.lead });

const texts = (said: Texts = {}): Texts => ({
  name: "Room 1",
  can: "fluoroscopy, sedation",
  hours: "mon-fri 8-16",
  reserve: "60",
  ...said,
});
const ask = (db: Database, asked: RoomsAsked, seen = roomsOf(db).version) =>
  askRooms(lead(db), { actId: newId(), seen, asked });
const add = (db: Database, said: Texts = {}) => ask(db, { kind: "add", texts: texts(said) });
const named = (db: Database, name: string) =>
  roomsOf(db).rooms.find((room) => room.name === name)?.id ?? "none";
const names = (db: Database) => roomsOf(db).rooms.map(({ name }) => name);

describe("the rooms of a clinic", () => {
  it("are none in version 0 until the lead adds one; then each keeps its id and its place", () => {
    using db = testDatabase();
    expect(roomsOf(db)).toEqual({ version: 0, rooms: [] });
    expect(add(db)).toMatchObject({ version: 1, changed: true, changes: [{ code: "added" }] });
    add(db, { name: "Room 2" });
    const roomId = named(db, "Room 1");
    expect(
      ask(db, { kind: "change", roomId, texts: texts({ name: "Angio", hours: "tue 0-24" }) }),
    ).toMatchObject({
      version: 3,
      changes: [{ code: "changed", from: { name: "Room 1" }, to: { id: roomId, name: "Angio" } }],
    });
    expect(names(db)).toEqual(["Angio", "Room 2"]);
    expect(roomsOf(db).rooms[0]).toEqual({
      id: roomId,
      name: "Angio",
      can: ["fluoroscopy", "sedation"],
      hours: [{ weekday: 2, from: 0, to: 1440 }],
      reserve: 60,
    });
    expect(ask(db, { kind: "take away", roomId })).toMatchObject({
      version: 4,
      changes: [{ code: "taken away" }],
    });
    expect(names(db)).toEqual(["Room 2"]);
    expect(roomsIn(db, 1)).toMatchObject([{ id: roomId, name: "Room 1" }]);
  });

  it("are changed by one of two at once; the second is told, and nothing of it is written", () => {
    using db = testDatabase();
    add(db);
    const roomId = named(db, "Room 1");
    ask(db, { kind: "change", roomId, texts: texts({ reserve: "30" }) }, 1);
    for (const refused of [
      () => ask(db, { kind: "change", roomId, texts: texts({ reserve: "90" }) }, 1),
      () => ask(db, { kind: "take away", roomId }, 1),
      () => ask(db, { kind: "add", texts: texts({ name: "Room 2" }) }, 0),
      () => ask(db, { kind: "take away", roomId: "gone" }),
      () => restoreRooms(lead(db), { actId: newId(), seen: 1, version: 0 }),
      () => restoreRooms(lead(db), { actId: newId(), seen: 2, version: 2 }),
    ])
      expect(refusalsOf(refused)).toMatchObject([{ code: "rooms-changed" }]);
    expect(roomsOf(db)).toMatchObject({ version: 2, rooms: [{ reserve: 30 }] });
  });

  it("stay where nothing changes; the same act sent again changes nothing more", () => {
    using db = testDatabase();
    const sent = { actId: newId(), seen: 0, asked: { kind: "add", texts: texts() } } as const;
    const first = askRooms(lead(db), sent);
    expect(askRooms(lead(db), sent)).toEqual(first);
    expect(names(db)).toEqual(["Room 1"]);
    const roomId = named(db, "Room 1");
    const same = {
      kind: "change",
      roomId,
      texts: texts({ can: "sedation, fluoro", reserve: "1 h" }),
    } as const;
    expect(ask(db, same)).toEqual({ version: 1, changed: false, changes: [], lost: [] });
    expect(roomsStory(db).versions).toHaveLength(1);
  });

  it("of an earlier version stand again as a version of their own, with the same ids and in the same order", () => {
    using db = testDatabase();
    add(db);
    add(db, { name: "Room 2" });
    const before = roomsOf(db).rooms;
    ask(db, { kind: "take away", roomId: named(db, "Room 1") });
    const restoring = { actId: newId(), seen: 3, version: 2 };
    const back = restoreRooms(lead(db), restoring);
    expect(back).toMatchObject({ version: 4, changed: true });
    expect(restoreRooms(lead(db), restoring)).toEqual(back);
    expect(roomsOf(db)).toEqual({ version: 4, rooms: before });
    restoreRooms(lead(db), { actId: newId(), seen: 4, version: 0 });
    expect(roomsOf(db)).toEqual({ version: 5, rooms: [] });
  });

  it("with something to mend write nothing: every refusal beside its field", () => {
    using db = testDatabase();
    const asked = { kind: "add", texts: texts({ name: "", hours: "mon-fri 17:00-08:00" }) } as const;
    expect(refusalsOf(() => ask(db, asked))).toMatchObject([
      { code: "text-missing", field: "name" },
      { code: "hours-end-before-beginning", field: "hours" },
    ]);
    expect(roomsOf(db)).toEqual({ version: 0, rooms: [] });
  });
});

describe("the story of the rooms", () => {
  it("says who changed what when, the newest on top; of a change that changed nothing it says nothing", () => {
    using db = testDatabase();
    add(db);
    const roomId = named(db, "Room 1");
    ask(db, { kind: "change", roomId, texts: texts() });
    askRooms({ db, staff: people.nurse }, { actId: newId(), seen: 1, asked: { kind: "take away", roomId } });
    expect(roomsStory(db).versions).toMatchObject([
      { version: 2, who: "Tansy Nurseworth", changes: [{ code: "taken away", room: { id: roomId } }] },
      { version: 1, who: "Lorne Leadbeater", changes: [{ code: "added", room: { id: roomId } }] },
    ]);
  });
});
