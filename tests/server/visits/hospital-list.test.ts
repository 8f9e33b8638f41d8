import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { patientById, updatePatient } from "#db/queries/patients.ts";
import { visitsOf } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { newId } from "#server/ids.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { bringHospitalList } from "#server/visits/hospital-list/bring-hospital-list.ts";
import { previewHospitalList } from "#server/visits/hospital-list/preview-hospital-list.ts";
import { addDays, day } from "#shared/day/day.ts";
import { type BookingAnswers, noAnswers } from "#shared/visit/hospital-list/columns.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { type Entry, placed, removed } from "#tests/support/factories.ts";
import { addInventedPatient, recordAs } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";
import { command } from "#tests/support/told.ts";
import { visitBooked } from "#tests/support/visit-factories.ts";

/** Fri 6 Nov 2026, 12:00 in UTC. */
const TODAY = day("2026-11-06");

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date(`${TODAY}T12:00:00Z`) });
});
afterEach(() => {
  vi.useRealTimers();
});

/** One patient of that family name and number, whose tubes are named after it. */
function record(db: Database, name: string, entries: readonly Entry[]): void {
  addInventedPatient(db, name, `00${name}`);
  const row = patientById(db, name);
  if (row === undefined) throw new Error("no patient");
  inTransaction(db, (tx) => updatePatient(tx, { ...row, familyName: name }));
  const commands = entries.map((entry) => ({ ...command(entry), eventId: entry.id ?? newId() }));
  recordAs(db, commands, name);
}

const tube = (id: string, side: "left" | "right" = "left", number = 1): Entry =>
  placed({ tube: id, side, number, on: addDays(TODAY, -60) });

/** "one" has a tube, "two" has one on each side, "moved" is booked elsewhere already, "ended" has none left. */
function clinic(): Database & Disposable {
  const db = testDatabase();
  record(db, "one", [tube("one")]);
  record(db, "two", [tube("two l"), tube("two r", "right", 2)]);
  record(db, "moved", [
    tube("moved"),
    visitBooked({
      id: "visit of moved",
      on: addDays(TODAY, -3),
      tubes: [{ tubeId: "moved", act: "exchange" }],
      visitOn: "2026-11-11",
      place: { kind: "elsewhere", where: "Far Dale General", from: 570 },
    }),
  ]);
  record(db, "ended", [tube("ended"), removed({ tube: "ended", on: addDays(TODAY, -1) })]);
  return db;
}

const HEAD = "MRN;Name;Date;Time;Where;Procedure";
const sheet = (...rows: readonly string[]) => ({
  bytes: new TextEncoder().encode([HEAD, ...rows].join("\n")),
  encoding: null,
});

const preview = (db: Database, rows: readonly string[], answers: Partial<BookingAnswers> = {}) =>
  previewHospitalList(db, { ...sheet(...rows), answers: { ...noAnswers, ...answers } });

const bring = (
  db: Database,
  rows: readonly string[],
  { actId = newId(), ...answers }: Partial<BookingAnswers> & { readonly actId?: string } = {},
) =>
  bringHospitalList(
    { db, staff: people.nurse },
    { ...sheet(...rows), actId, answers: { ...noAnswers, ...answers } },
  );

const booked = (db: Database, patient: string) => visitsOf(db, patient).map(({ visit }) => visit);
const eventCount = (db: Database) => db.sqlite.prepare("select count(*) from events").pluck().get();

const ONE = "00one;;13/11/2026;09:30;Far Dale General;exchange";
const TWO = "00two;;13/11/2026;10:00;Far Dale General;right PCN exchange";
const MOVED = "00moved;;14/11/2026;09:30;Far Dale General;exchange";

describe("a hospital's list", () => {
  it("is shown row by row before anything is written: booked, moved, known, asked, set aside", () => {
    using db = clinic();
    const before = eventCount(db);
    const { rows, problems } = preview(db, [
      ONE,
      MOVED,
      "00two;;13/11/2026;10:00;Far Dale General;exchange",
      "00nobody;;13/11/2026;11:00;;exchange",
      "00ended;;13/11/2026;11:00;;exchange",
      "00one;;1/11/2026;11:00;;exchange",
    ]);
    expect(problems).toEqual([]);
    expect(rows).toMatchObject([
      {
        row: 2,
        stands: "books",
        patient: { familyName: "one", number: "00one" },
        sentence:
          "Will be booked elsewhere: Left nephrostomy, 8 F: exchange, Fri 13 Nov 2026, 09:30, Far Dale General.",
      },
      {
        stands: "moves",
        sentence:
          "Moves the booking of Wed 11 Nov 2026, 09:30, Far Dale General: Left nephrostomy, 8 F: exchange, Sat 14 Nov 2026, 09:30, Far Dale General.",
      },
      {
        stands: "asks",
        options: [{ value: "1:exchange" }, { value: "2:exchange" }, { value: "1+2:exchange" }],
      },
      {
        stands: "set aside",
        reasons: [
          { sentence: "Nobody here has the number 00nobody. Register the patient, or mend the number." },
        ],
      },
      { stands: "set aside", reasons: [{ sentence: expect.stringContaining("has no tube on record") }] },
      {
        stands: "set aside",
        reasons: [
          {
            label: "Date",
            sentence: "Sun 1 Nov 2026 is past. Type a day and time that are still to come.",
          },
        ],
      },
    ]);
    expect(eventCount(db)).toBe(before);
  });

  it("comes in by one act, and the act taken back takes all of it back, of every patient", () => {
    using db = clinic();
    const { actId, ...brought } = bring(db, [ONE, TWO, MOVED, "00nobody;;13/11/2026;;;exchange"]);
    expect(brought).toEqual({ booked: 2, moved: 1, known: 0, asked: 0, setAside: 1 });
    expect(booked(db, "one")).toMatchObject([
      {
        state: "booked",
        on: "2026-11-13",
        place: { kind: "elsewhere", where: "Far Dale General", from: 570 },
        tubes: [{ tubeId: "one", act: "exchange" }],
      },
    ]);
    expect(booked(db, "two")).toMatchObject([{ tubes: [{ tubeId: "two r", act: "exchange" }] }]);
    expect(booked(db, "moved")).toMatchObject([{ id: "visit of moved", on: "2026-11-14", moved: 1 }]);

    undoAct({ db, staff: people.nurse }, { actId: newId(), undoes: actId });
    expect([booked(db, "one"), booked(db, "two")]).toEqual([[], []]);
    expect(booked(db, "moved")).toMatchObject([{ on: "2026-11-11", moved: 0 }]);
    // And comes in again as it did before.
    expect(bring(db, [ONE, TWO, MOVED])).toMatchObject({ booked: 2, moved: 1 });
  });

  it("sent twice is the same act; brought again under another, it is known already and writes nothing", () => {
    using db = clinic();
    const actId = newId();
    const first = bring(db, [ONE], { actId });
    const after = eventCount(db);
    expect(bring(db, [ONE], { actId })).toEqual(first);
    expect(refusalsOf(() => bring(db, [TWO], { actId }))).toMatchObject([{ code: "act-already-used" }]);
    expect(preview(db, [ONE]).rows).toMatchObject([{ stands: "known" }]);
    expect(refusalsOf(() => bring(db, [ONE]))).toMatchObject([{ code: "nothing-to-book" }]);
    expect(eventCount(db)).toBe(after);
  });

  it("a row that asks waits for its choice; with it, it is booked for the tubes that were chosen", () => {
    using db = clinic();
    const asks = ["00two;;13/11/2026;10:00;Far Dale General;exchange"];
    expect(refusalsOf(() => bring(db, asks))).toMatchObject([{ code: "nothing-to-book" }]);
    expect(bring(db, asks, { choices: { 2: "1+2:exchange" } })).toMatchObject({ booked: 1 });
    expect(booked(db, "two")).toMatchObject([{ tubes: [{ tubeId: "two l" }, { tubeId: "two r" }] }]);
  });

  it("rows that contradict each other are all left out, and what is clear comes in", () => {
    using db = clinic();
    const before = eventCount(db);
    const both = "00two;;13/11/2026;10:00;Far Dale General;bilateral PCN exchange";
    expect(bring(db, [ONE, TWO, both])).toMatchObject({ booked: 1, setAside: 2 });
    expect(booked(db, "two")).toEqual([]);
    expect(Number(eventCount(db))).toBe(Number(before) + 1);
  });

  it("asks for the order of its dates where they do not say it, and for columns that it lacks", () => {
    using db = clinic();
    const unclear = ["00one;;11/12/2026;09:30;Far Dale General;exchange"];
    expect(preview(db, unclear)).toMatchObject({
      asksOrder: true,
      rows: [],
      problems: [{ field: "dateOrder", sentence: expect.stringContaining('Row 2 says "11/12/2026"') }],
    });
    expect(refusalsOf(() => bring(db, unclear))).toMatchObject([{ code: "date-order-asked" }]);
    expect(preview(db, unclear, { dateOrder: "month first" }).rows).toMatchObject([
      { sentence: expect.stringContaining("Thu 12 Nov 2026") },
    ]);
    expect(preview(db, unclear, { dateOrder: "day first" }).rows).toMatchObject([
      { sentence: expect.stringContaining("Fri 11 Dec 2026") },
    ]);
    const columns: BookingAnswers["columns"] = ["left out", "left out", "on", "at", "where", "what"];
    expect(preview(db, [ONE], { columns }).problems).toMatchObject([
      { sentence: expect.stringContaining("No column says the record number") },
    ]);
  });

  it("counts as booked: the tube is no longer without a visit", async () => {
    using db = clinic();
    const without = async () =>
      (await callerAs(db, people.nurse).list.exchanges({ filter: { visit: "without" } })).lines.map(
        ({ patient }) => patient.id,
      );
    expect(await without()).toContain("one");
    bring(db, [ONE]);
    expect(await without()).not.toContain("one");
  });
});
