import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { day } from "#shared/day/day.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people } from "#tests/support/database.ts";
import { readCalendar } from "#tests/support/read-calendar.ts";
import { aboutNow, aTube, aVisit, book, clinicWithRooms } from "#tests/support/visit-clinic.ts";

/** Friday 6 November 2026, noon in London. */
beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date("2026-11-06T12:00:00Z") });
});
afterEach(() => {
  vi.useRealTimers();
});

const nurse = (db: Database) => callerAs(db, people.nurse);

const readBack = async (db: Database) => readCalendar(await nurse(db).visit.calendarFile());

const move = async (db: Database, visitId: string, texts: Texts) =>
  nurse(db).visit.moved({
    ...(await aboutNow(db)),
    visitId,
    urgent: false,
    texts: { on: "12 nov 2026", at: "10:00", room: "Room 1", minutes: "30", ...texts },
  });

const cancel = async (db: Database, visitId: string) =>
  nurse(db).visit.noted({
    ...(await aboutNow(db)),
    visitId,
    state: "cancelled",
    texts: { by: "the patient", reason: "unwell" },
  });

describe("the calendar file of booked visits (RFC 5545), read back by another library", () => {
  it("holds what is booked from today on; a past visit is not in it", async () => {
    using db = clinicWithRooms();
    const tubes = [await aTube(db), await aTube(db, { side: "r" })];
    const visitId = await aVisit(db, { tubes });
    expect(await readBack(db)).toMatchObject([
      {
        uid: `${visitId}@dwellbook`,
        summary: "exchange, 2 tubes",
        location: "Room 1",
        startText: "2026-11-11T09:30:00Z",
        minutes: 30,
        status: "CONFIRMED",
      },
    ]);
    vi.setSystemTime(new Date("2026-11-11T23:00:00Z"));
    expect(await readBack(db)).toHaveLength(1);
    vi.setSystemTime(new Date("2026-11-12T00:30:00Z"));
    await expect(nurse(db).visit.calendarFile()).rejects.toThrow("visits-none-to-come");
  });

  it("a visit that is moved keeps its UID and raises its SEQUENCE, and so does a move that is taken back", async () => {
    using db = clinicWithRooms();
    const visitId = await aVisit(db, { tubes: [await aTube(db)] });
    const [booked] = await readBack(db);
    const { actId } = await move(db, visitId, {});
    const [moved] = await readBack(db);
    expect(moved).toMatchObject({ uid: booked?.uid, startText: "2026-11-12T10:00:00Z" });
    expect(moved?.sequence).toBeGreaterThan(booked?.sequence ?? Number.POSITIVE_INFINITY);
    await nurse(db).record.undone({ actId: newId(), undoes: actId });
    const [undone] = await readBack(db);
    expect(undone).toMatchObject({ uid: booked?.uid, start: booked?.start });
    expect(undone?.sequence).toBeGreaterThan(moved?.sequence ?? Number.POSITIVE_INFINITY);
  });

  it("a visit that is cancelled is STATUS:CANCELLED under its UID, and so is a booking that is taken back", async () => {
    using db = clinicWithRooms();
    const visitId = await aVisit(db, { tubes: [await aTube(db)] });
    const [booked] = await readBack(db);
    await cancel(db, visitId);
    const cancelled = await readBack(db);
    expect(cancelled).toMatchObject([
      { uid: booked?.uid, status: "CANCELLED", summary: "Cancelled: exchange, 1 tube" },
    ]);
    expect(cancelled[0]?.sequence).toBeGreaterThan(booked?.sequence ?? Number.POSITIVE_INFINITY);
    const tubes = [await aTube(db, { side: "r" })];
    const other = await book(db, { tubes, texts: { on: "13 nov 2026", at: "8:00" } });
    expect((await readBack(db))[1]).toMatchObject({ status: "CONFIRMED" });
    await nurse(db).record.undone({ actId: newId(), undoes: other.actId });
    expect((await readBack(db))[1]).toMatchObject({
      uid: `${other.visitId}@dwellbook`,
      status: "CANCELLED",
      startText: "2026-11-13T08:00:00Z",
    });
  });

  it("a booking for a past day that was moved ahead and then taken back is cancelled too", async () => {
    using db = clinicWithRooms();
    const tubes = [await aTube(db)];
    const booked = await book(db, { tubes, texts: { on: "6 nov 2026", at: "15:00" } });
    const moved = await move(db, booked.visitId, { on: "20 nov 2026" });
    vi.setSystemTime(new Date("2026-11-09T12:00:00Z"));
    for (const { actId } of [moved, booked]) await nurse(db).record.undone({ actId: newId(), undoes: actId });
    expect(await readBack(db)).toMatchObject([{ uid: `${booked.visitId}@dwellbook`, status: "CANCELLED" }]);
  });

  it("one elsewhere says no name that somebody typed, and is of its day where its time is not known", async () => {
    using db = clinicWithRooms();
    const texts = { at: "", room: "", minutes: "", elsewhere: "Brackenfold's ward, bed 000417" };
    await aVisit(db, { tubes: [await aTube(db)], texts });
    await aVisit(db, { tubes: [await aTube(db, { side: "r" })], texts: { ...texts, at: "14:00" } });
    expect(await readBack(db)).toMatchObject([
      { location: "Elsewhere", startText: "2026-11-11" },
      { location: "Elsewhere", startText: "2026-11-11T14:00:00Z", minutes: 0 },
    ]);
  });

  it("one that is proposed is tentative", async () => {
    using db = clinicWithRooms();
    await aVisit(db, { tubes: [await aTube(db)], texts: { held: "proposed" } });
    expect(await readBack(db)).toMatchObject([{ status: "TENTATIVE" }]);
  });

  it("keeps the clinic's hour over a clock change (British summer time begins on 28 March 2027, 01:00)", async () => {
    using db = clinicWithRooms();
    await aVisit(db, { tubes: [await aTube(db)], texts: { on: "26 mar 2027" } });
    await aVisit(db, { tubes: [await aTube(db, { side: "r" })], texts: { on: "29 mar 2027" } });
    expect((await readBack(db)).map(({ startText }) => startText)).toEqual([
      "2027-03-26T09:30:00Z",
      "2027-03-29T08:30:00Z",
    ]);
  });

  it("holds nothing of whose visit it is: no name, number, birth date or id of patient or tube, no note", async () => {
    using db = clinicWithRooms();
    const tubeId = await aTube(db);
    const visitId = await aVisit(db, { tubes: [tubeId], texts: { note: "asks for Ottoline's sister" } });
    await cancel(db, visitId);
    const file = (await nurse(db).visit.calendarFile()).replaceAll("\r\n ", "");
    for (const told of [
      "Brackenfold",
      "Ottoline",
      "000417",
      "1960",
      "patient-1",
      tubeId,
      "unwell",
      "sister",
      "nephrostomy",
    ])
      expect(file).not.toContain(told);
    expect(file).toContain(visitId);
  });

  it("whoever takes it is written down", async () => {
    using db = clinicWithRooms([{ from: day("2026-12-24"), to: day("2026-12-24"), reason: "audit" }]);
    await aVisit(db, { tubes: [await aTube(db)] });
    await nurse(db).visit.calendarFile();
    const { reads } = await callerAs(db, people.lead).list.whoSawWhat();
    expect(reads.rows[0]).toMatchObject({
      who: "Tansy Nurseworth",
      procedure: "visit.calendarFile",
      subjectKind: "export",
      subjectId: "visits.ics",
    });
  });
});
