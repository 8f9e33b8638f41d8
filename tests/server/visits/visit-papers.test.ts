import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { day } from "#shared/day/day.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people } from "#tests/support/database.ts";
import { addInventedPatient } from "#tests/support/patient.ts";
import { aboutNow, aTube, aVisit, clinicWithRooms } from "#tests/support/visit-clinic.ts";

/** Friday 6 November 2026, noon in London. */
beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date("2026-11-06T12:00:00Z") });
});
afterEach(() => {
  vi.useRealTimers();
});

const nurse = (db: Database) => callerAs(db, people.nurse);
const sheetOf = (db: Database) => nurse(db).visit.sheet({ on: day("2026-11-11") });

describe("the day sheet", () => {
  it("has who comes by room in order of time, with every number, each tube as it stands, and what is open", async () => {
    using db = clinicWithRooms();
    addInventedPatient(db, "patient-2", "000418");
    const [own, other] = [await aTube(db), await aTube(db, { side: "r" }, "patient-2")];
    await aVisit(db, { tubes: [other], patientId: "patient-2", texts: { at: "13:00" }, act: "check" });
    await aVisit(db, { tubes: [own] });
    const sheet = await sheetOf(db);
    expect(sheet.rooms.map(({ room, visits }) => [room.name, visits.length])).toEqual([
      ["Room 1", 2],
      ["Room 2", 0],
    ]);
    const [first, second] = sheet.rooms[0]!.visits;
    expect(first).toMatchObject({
      patient: { familyName: "Brackenfold", identifiers: [{ issuer: "clinic", value: "000417" }] },
      tubes: [{ act: "exchange", tube: { kind: "nephrostomy", number: 1 } }],
    });
    expect(second).toMatchObject({
      patient: { identifiers: [{ value: "000418" }] },
      tubes: [{ act: "check" }],
    });
    expect(first?.open).toContain("signed order");
    // Nobody has approved the example table.
    expect([sheet.isExample, first?.isExample]).toEqual([true, true]);
    expect(sheet.bleeding?.rows.map((row) => row.class)).toEqual(["low", "high"]);
  });

  it("what is settled is open no longer; who is cancelled is not on it", async () => {
    using db = clinicWithRooms();
    const [first, second] = [await aTube(db), await aTube(db, { side: "r" })];
    const settled = await aVisit(db, { tubes: [first] });
    const cancelled = await aVisit(db, { tubes: [second], texts: { at: "11:00" } });
    const stood = (await sheetOf(db)).rooms[0]!.visits.map(({ open }) => open);
    await nurse(db).visit.prepared({
      ...(await aboutNow(db)),
      visitId: settled,
      texts: { "signed-order": "settled" },
    });
    await nurse(db).visit.noted({
      ...(await aboutNow(db)),
      visitId: cancelled,
      state: "cancelled",
      texts: { by: "the patient" },
    });
    const { visits } = (await sheetOf(db)).rooms[0]!;
    expect(visits.map(({ visit }) => visit.id)).toEqual([settled]);
    expect(visits[0]?.open).toEqual(stood[0]?.filter((thing) => thing !== "signed order"));
  });

  it("one elsewhere stands apart, and nothing is asked of it here", async () => {
    using db = clinicWithRooms();
    const texts = { at: "", room: "", minutes: "", elsewhere: "the day ward" };
    await aVisit(db, { tubes: [await aTube(db)], texts });
    const { rooms, others } = await sheetOf(db);
    expect(rooms.flatMap(({ visits }) => visits)).toEqual([]);
    expect(others.map(({ visit, open }) => [visit.place.kind, open])).toEqual([["elsewhere", null]]);
  });
});

describe("the letter to the patient", () => {
  it("rests on what the rows ask for today, without what does not apply to this patient", async () => {
    using db = clinicWithRooms();
    const visitId = await aVisit(db, { tubes: [await aTube(db)] });
    const letter = () => nurse(db).visit.letter({ patientId: "patient-1", visitId });
    const { things, room, takeHome, tubes, isExample } = await letter();
    expect(isExample).toBe(true);
    expect(things).toContain("escort");
    expect(room).toBe("Room 1");
    expect(takeHome).toMatchObject({ clinic: { name: "Quillmere Tube Clinic", phone: "" }, approved: null });
    expect(tubes.map(({ act, row }) => [act, row.found])).toEqual([["exchange", "row"]]);
    await nurse(db).visit.prepared({
      ...(await aboutNow(db)),
      visitId,
      texts: { escort: "does not apply" },
    });
    expect((await letter()).things).toEqual(things.filter((thing) => thing !== "escort"));
  });

  it("of a visit elsewhere asks nothing by our rows, and of another's visit there is none", async () => {
    using db = clinicWithRooms();
    addInventedPatient(db, "patient-2", "000418");
    const texts = { at: "", room: "", minutes: "", elsewhere: "the day ward" };
    const visitId = await aVisit(db, { tubes: [await aTube(db)], texts });
    const { things, room, isExample } = await nurse(db).visit.letter({ patientId: "patient-1", visitId });
    expect([things, room, isExample]).toEqual([[], null, false]);
    await expect(nurse(db).visit.letter({ patientId: "patient-2", visitId })).rejects.toThrow(
      "visit-not-booked",
    );
  });
});

it("both papers are written down as printed: the letter with its patient, the sheet with its day", async () => {
  using db = clinicWithRooms();
  const visitId = await aVisit(db, { tubes: [await aTube(db)] });
  await sheetOf(db);
  await nurse(db).visit.letter({ patientId: "patient-1", visitId });
  const { reads } = await callerAs(db, people.lead).list.whoSawWhat();
  const prints = reads.rows.filter(({ subjectKind }) => subjectKind === "print");
  expect(prints.map(({ subjectId, concerned }) => [subjectId, concerned?.familyName ?? null])).toEqual(
    expect.arrayContaining([
      ["patient-1", "Brackenfold"],
      ["2026-11-11", null],
    ]),
  );
});
