import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { askRooms } from "#server/rooms/change-rooms.ts";
import { roomsOf } from "#server/rooms/rooms-of.ts";
import { viewDays } from "#server/visits/view-days.ts";
import { addDays, type Day, day } from "#shared/day/day.ts";
import { printMinute } from "#shared/words/offers.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { spanWords, toSettleWords, visitTime } from "#shared/words/visit-day.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people } from "#tests/support/database.ts";
import { addInventedPatient } from "#tests/support/patient.ts";
import { aboutNow, aTube, aVisit, clinicWithRooms } from "#tests/support/visit-clinic.ts";

const WEDNESDAY = day("2026-11-11");

/** Friday 6 November 2026, noon in London. */
beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date("2026-11-06T12:00:00Z") });
});
afterEach(() => {
  vi.useRealTimers();
});

const oneDay = (db: Database, on: Day = WEDNESDAY) => viewDays(db, { from: on, days: 1 }).days[0]!;

/** A room's day in short: who comes when, and what is free. */
function inRoom(db: Database, name: string, on: Day = WEDNESDAY) {
  const found = oneDay(db, on).rooms.find(({ room }) => room.name === name)!;
  return {
    visits: found.visits.map(({ visit }) => visitTime(visit.place)),
    free: found.free.map(spanWords),
    left: found.left,
  };
}

const noted = async (db: Database, visitId: string, state: "cancelled" | "confirmed") =>
  callerAs(db, people.nurse).visit.noted({
    ...(await aboutNow(db)),
    visitId,
    state,
    texts: state === "cancelled" ? { by: "the patient", reason: "unwell" } : {},
  });

describe("a day of visits", () => {
  it("has each room's visits in order of time and the gaps between them, whatever order they were booked in", async () => {
    using db = clinicWithRooms();
    const [first, second, third] = [await aTube(db), await aTube(db, { side: "r" }), await aTube(db)];
    await aVisit(db, { tubes: [first], texts: { at: "13:00" } });
    await aVisit(db, { tubes: [second], texts: { at: "9:30", minutes: "40" } });
    await aVisit(db, { tubes: [third], texts: { at: "13:30", room: "Room 2" } });
    expect(inRoom(db, "Room 1")).toEqual({
      visits: ["09:30 to 10:10", "13:00 to 13:30"],
      free: ["08:00 to 09:30", "10:10 to 13:00", "13:30 to 16:00"],
      left: 90 + 170 + 150,
    });
    expect(inRoom(db, "Room 2")).toEqual({
      visits: ["13:30 to 14:00"],
      free: ["13:00 to 13:30", "14:00 to 16:00"],
      left: 150,
    });
    expect(oneDay(db).rooms[0]?.visits[0]).toMatchObject({
      patient: { familyName: "Brackenfold", number: "000417" },
      tubes: [{ act: "exchange", name: "Right nephrostomy, 8 F" }],
      against: [],
    });
  });

  it("a visit elsewhere stands apart and takes no room; a cancelled one is put aside and leaves its time free", async () => {
    using db = clinicWithRooms();
    const [first, second] = [await aTube(db), await aTube(db, { side: "r" })];
    await aVisit(db, { tubes: [first], texts: { at: "", room: "", minutes: "", elsewhere: "the day ward" } });
    const cancelled = await aVisit(db, { tubes: [second] });
    expect(inRoom(db, "Room 1").visits).toEqual(["09:30 to 10:00"]);
    await noted(db, cancelled, "cancelled");
    const { others, gone } = oneDay(db);
    expect(others.map(({ visit }) => visit.place)).toEqual([
      { kind: "elsewhere", where: "the day ward", from: null },
    ]);
    expect(gone.map(({ visit }) => [visit.state, visit.by, visit.reason])).toEqual([
      ["cancelled", "the patient", "unwell"],
    ]);
    expect(inRoom(db, "Room 1")).toEqual({ visits: [], free: ["08:00 to 16:00"], left: 480 });
  });

  it("says how many things are to be settled before a visit, and by when the first of them, until they are", async () => {
    using db = clinicWithRooms();
    const tube = await aTube(db);
    const visitId = await aVisit(db, { tubes: [tube] });
    const toSettle = () => oneDay(db).rooms[0]!.visits[0]!.toSettle;
    const { things, by } = toSettle();
    // The example table asks for a signed order five working days before: Wednesday 4 November, which has passed.
    expect([things[0], by]).toEqual(["signed order", "2026-11-04"]);
    expect(toSettleWords(toSettle(), day("2026-11-06"))).toBe(
      `${things.length} to settle, the first was due on Wed 4 Nov 2026`,
    );
    await callerAs(db, people.nurse).visit.prepared({
      ...(await aboutNow(db)),
      visitId,
      texts: { "signed-order": "settled" },
    });
    expect(toSettle().things).toEqual(things.slice(1));
    expect(toSettle().by).toBe("2026-11-04");
  });

  it("offers of today what lies ahead, from the next five minutes on, and of a past day nothing", async () => {
    using db = clinicWithRooms();
    const today = day("2026-11-06");
    vi.setSystemTime(new Date("2026-11-06T12:02:00Z"));
    expect(inRoom(db, "Room 1", today).free).toEqual(["12:05 to 16:00"]);
    vi.setSystemTime(new Date("2026-11-06T16:00:00Z"));
    expect(inRoom(db, "Room 1", today).free).toEqual([]);
    expect(inRoom(db, "Room 1", addDays(today, -1)).free).toEqual([]);
  });

  it("a closed day says why and has nothing free; what is booked there says that it could not be", async () => {
    using db = clinicWithRooms();
    const tube = await aTube(db);
    await aVisit(db, { tubes: [tube] });
    await callerAs(db, people.lead).calendar.change({
      actId: newId(),
      seen: 1,
      asked: { kind: "close", texts: { from: "11 nov 2026", to: "11 nov 2026", reason: "stocktaking" } },
    });
    const { shut, rooms } = oneDay(db);
    expect(shut).toBe("stocktaking");
    expect(rooms[0]?.free).toEqual([]);
    expect(rooms[0]?.visits[0]?.against.map(refusalSentence)).toEqual([
      expect.stringContaining("stocktaking"),
    ]);
    expect(oneDay(db, day("2026-11-15")).shut).toBe("not open on Sundays");
  });

  it("a room that can no longer what a visit needs, or is staffed no longer, is said beside it, and one that is gone", async () => {
    using db = clinicWithRooms();
    const tube = await aTube(db);
    await aVisit(db, { tubes: [tube] });
    const roomId = roomsOf(db).rooms[0]!.id;
    const change = (asked: Parameters<typeof askRooms>[1]["asked"]) =>
      askRooms({ db, staff: people.lead }, { actId: newId(), seen: roomsOf(db).version, asked });
    const texts = { name: "Room 1", can: "ultrasound", hours: "mon-fri 13-16", reserve: "" };
    change({ kind: "change", roomId, texts });
    const codes = () => oneDay(db).rooms[0]?.visits[0]?.against.map(({ code }) => code);
    expect(codes()).toEqual(["slot-not-staffed", "slot-room-cannot"]);
    change({ kind: "take away", roomId });
    const { rooms, others } = oneDay(db);
    expect(rooms.map(({ room }) => room.name)).toEqual(["Room 2"]);
    expect(others.map(({ against }) => against.map(({ code }) => code))).toEqual([["slot-room-unknown"]]);
  });

  it("a death that is undone brings a visit back over one that was booked meanwhile, and both rows say so", async () => {
    using db = clinicWithRooms();
    addInventedPatient(db, "patient-2", "000418");
    const [own, other] = [await aTube(db), await aTube(db, {}, "patient-2")];
    await aVisit(db, { tubes: [own] });
    const nurse = callerAs(db, people.nurse);
    const { actId } = await nurse.record.died({
      ...(await aboutNow(db)),
      texts: { when: "6 nov 2026", by: "the ward" },
    });
    expect(inRoom(db, "Room 1").visits).toEqual([]);
    await aVisit(db, { tubes: [other], patientId: "patient-2", texts: { at: "9:45" } });
    await nurse.record.undone({ actId: newId(), undoes: actId });
    const { visits } = oneDay(db).rooms[0]!;
    expect(visits.map(({ visit }) => printMinute(visit.place.from ?? 0))).toEqual(["09:30", "09:45"]);
    expect(visits.map(({ against }) => against.map(({ code }) => code))).toEqual([
      ["slot-taken"],
      ["slot-taken"],
    ]);
  });
});

describe("the server's own zone", () => {
  it("changes nothing of a week of visits", async () => {
    using db = clinicWithRooms([{ from: day("2026-11-12"), to: day("2026-11-12"), reason: "audit" }]);
    const tube = await aTube(db);
    await aVisit(db, { tubes: [tube] });
    const week = () => viewDays(db, { from: day("2026-11-05"), days: 7 });
    const stood = week();
    expect(stood.days.flatMap(({ rooms }) => rooms.flatMap(({ visits }) => visits))).toHaveLength(1);
    const before = process.env.TZ;
    try {
      for (const zone of ["America/Los_Angeles", "Pacific/Kiritimati"]) {
        process.env.TZ = zone;
        expect(new Date().getTimezoneOffset()).not.toBe(0);
        expect(week()).toEqual(stood);
      }
    } finally {
      if (before === undefined) delete process.env.TZ;
      else process.env.TZ = before;
    }
  });
});
