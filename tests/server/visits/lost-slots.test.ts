import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { previewCalendar } from "#server/calendar/preview-change.ts";
import { newId } from "#server/ids.ts";
import { askRooms } from "#server/rooms/change-rooms.ts";
import { roomsOf } from "#server/rooms/rooms-of.ts";
import { book, clinic, NOW, slot } from "#tests/support/booking-clinic.ts";
import { people } from "#tests/support/database.ts";

beforeEach(() => vi.useFakeTimers({ toFake: ["Date"], now: new Date(NOW) }));
afterEach(() => vi.useRealTimers());

const closing = (from: string, to: string) => ({
  seen: 1,
  asked: { kind: "close" as const, texts: { from, to, reason: "a flood" } },
  page: 1,
});

describe("visits that a change leaves without their slot", () => {
  it("are told before the clinic is closed, and only those", () => {
    using db = clinic();
    const { visitId } = book(db, slot);
    book(db, { ...slot, on: "9 nov 2026" }, "patient-2");
    const { lost } = previewCalendar(db, closing("4 nov 2026", "6 nov 2026"));
    expect(lost).toEqual([
      {
        visitId,
        patientId: "patient-1",
        whose: "Brackenfold, Ottoline",
        on: "2026-11-04",
        slot: "Wed 4 Nov 2026, 09:30, 30 min",
        says: "The clinic is closed on Wed 4 Nov 2026: a flood. Choose another day.",
      },
    ]);
    expect(previewCalendar(db, closing("16 nov 2026", "20 nov 2026")).lost).toEqual([]);
  });

  it("are told with a change of the rooms", () => {
    using db = clinic();
    const { visitId } = book(db, slot);
    const texts = { name: "Room 1", can: "fluoroscopy", hours: "mon-fri 10-16", reserve: "60" };
    const done = askRooms(
      { db, staff: people.lead },
      { actId: newId(), seen: roomsOf(db).version, asked: { kind: "change", roomId: "room-1", texts } },
    );
    expect(done.lost.map((one) => [one.visitId, one.says])).toEqual([
      [
        visitId,
        "Room 1 is not staffed for all of that time: 10:00 to 16:00. Choose another time, or fewer minutes.",
      ],
    ]);
  });

  it("one that cannot stay already is no news", () => {
    using db = clinic();
    book(db, slot);
    const change = (hours: string) =>
      askRooms(
        { db, staff: people.lead },
        {
          actId: newId(),
          seen: roomsOf(db).version,
          asked: {
            kind: "change",
            roomId: "room-1",
            texts: { name: "Room 1", can: "fluoroscopy", hours, reserve: "60" },
          },
        },
      );
    expect(change("mon-fri 10-16").lost).toHaveLength(1);
    expect(change("mon-fri 11-16").lost).toHaveLength(0);
  });
});
