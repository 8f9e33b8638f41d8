import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { openDatabase } from "#db/connection.ts";
import { migrateFile } from "#db/migrate.ts";
import { identifiersOf, patientById, updatePatient } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { newId } from "#server/ids.ts";
import { correctPatient } from "#server/patients/correct-patient.ts";
import { findPatient, MOST_FOUND } from "#server/patients/find-patient.ts";
import { registerPatient } from "#server/patients/register-patient.ts";
import { instant } from "#shared/day/instant.ts";
import { contactSchema } from "#shared/record/patient/patient-details.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { testFolder } from "#tests/support/folder.ts";
import { restoreImage } from "#tests/support/images.ts";

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date("2026-11-06T12:00:00Z") });
});
afterEach(() => {
  vi.useRealTimers();
});

const doing = (db: Database) => ({ db, staff: people.nurse });

const ottoline = {
  familyName: "Brackenfold",
  givenName: "Zoë Ottoline",
  birthOn: "3 apr 1951",
  number: "000417",
  issuer: "Quillmere",
  telephones: "01632 960117 after 5 pm",
};

const register = (db: Database, texts: Partial<typeof ottoline> & Record<string, string> = {}): string =>
  registerPatient(doing(db), { actId: newId(), texts: { ...ottoline, ...texts } }).patientId;

const idsFor = (db: Database, typed: string) => findPatient(db, typed).patients.map(({ id }) => id);

/** As an undone registration, or a join, leaves a row. */
function change(db: Database, id: string, to: { joinedInto?: string; withdrawnAt?: number }): void {
  const row = patientById(db, id);
  if (row === undefined) throw new Error(`no patient ${id}`);
  const withdrawnAt = to.withdrawnAt === undefined ? row.withdrawnAt : instant(to.withdrawnAt);
  inTransaction(db, (tx) =>
    updatePatient(tx, { ...row, joinedInto: to.joinedInto ?? row.joinedInto, withdrawnAt }),
  );
}

describe("a patient is found", () => {
  it.each([
    "ottoline brack",
    "zoe",
    "ZOË",
    "000417",
    "417",
    "0117",
    "01632-960-117",
    "+44 1632 960117",
    "3/4/1951",
    "4/3/1951",
    "1951-04-03",
    "3 apr 1951",
    "brack 3 apr 1951",
    "88",
    "01632 960942",
  ])("by %j", (typed) => {
    using db = testDatabase();
    const id = register(db, {
      secondNumber: "88",
      secondIssuer: "Another house",
      alternateName: "A neighbor",
      alternateTelephone: "01632 960942",
    });
    register(db, {
      familyName: "Thistlewick",
      givenName: "Barnaby",
      birthOn: "5 may 1960",
      number: "000999",
      telephones: "01632 960555",
    });
    expect(idsFor(db, typed)).toEqual([id]);
  });

  it.each(["thistle", "5 apr 1951", "brack thistle", "  ", "%", "_", "1951"])("not by %j", (typed) => {
    using db = testDatabase();
    register(db);
    expect(idsFor(db, typed)).toEqual([]);
  });

  it("by what a correction says, and no longer by what it took away", () => {
    using db = testDatabase();
    const patientId = register(db);
    const lastUpdatedAt = patientById(db, patientId)?.updatedAt ?? instant(0);
    const texts = { ...ottoline, familyName: "Quenchley", telephones: "555 0199" };
    correctPatient(doing(db), { actId: newId(), patientId, texts, lastUpdatedAt });
    expect(idsFor(db, "quenchley 5550199")).toEqual([patientId]);
    expect(idsFor(db, "brackenfold")).toEqual([]);
    expect(idsFor(db, "01632 960117")).toEqual([]);
  });
});

describe("the order of whom a search finds", () => {
  it("a whole number before numbers and telephones that hold it, and marked as meant", () => {
    using db = testDatabase();
    const part = register(db, { familyName: "Aardwhistle", number: "14170", telephones: "" });
    const telephone = register(db, { familyName: "Basketry", number: "2", telephones: "555 0417" });
    const whole = register(db, { familyName: "Zitherwick", number: "0417", telephones: "" });
    const found = findPatient(db, "417").patients;
    expect(found.map(({ id, isNumbered }) => [id, isNumbered])).toEqual([
      [whole, true],
      [part, false],
      [telephone, false],
    ]);
  });

  it("of two numbers that differ in their leading zeros, the one as typed is meant; as neither is, both", () => {
    using db = testDatabase();
    const zeros = register(db, { number: "000042" });
    const plain = register(db, { number: "42" });
    const meant = (typed: string) =>
      findPatient(db, typed)
        .patients.filter(({ isNumbered }) => isNumbered)
        .map(({ id }) => id);
    expect([meant("000042"), meant(" 42 ")]).toEqual([[zeros], [plain]]);
    expect(meant("0042").toSorted()).toEqual([zeros, plain].toSorted());
  });

  it("a whole name before one that begins so, that before one that holds it", () => {
    using db = testDatabase();
    const holds = register(db, { familyName: "Ashwick", givenName: "Ann", number: "1" });
    const begins = register(db, { familyName: "Wickerly", givenName: "Ann", number: "2" });
    const whole = register(db, { familyName: "Wick", givenName: "Ann", number: "3" });
    expect(idsFor(db, "wick")).toEqual([whole, begins, holds]);
    expect(findPatient(db, "wick").patients.some(({ isNumbered }) => isNumbered)).toBe(false);
  });

  it("ends where so many are found that more must be typed", () => {
    using db = testDatabase();
    for (let number = 1; number <= MOST_FOUND + 2; number += 1) register(db, { number: `A${number}` });
    const { patients, more } = findPatient(db, "brackenfold");
    expect([patients.length, more]).toEqual([MOST_FOUND, true]);
    expect(findPatient(db, "a1 ottoline").more).toBe(false);
  });
});

describe("records that stand no more", () => {
  it("a registration that was undone is not found", () => {
    using db = testDatabase();
    change(db, register(db), { withdrawnAt: 1_790_000_000_000 });
    expect(idsFor(db, "brackenfold")).toEqual([]);
  });

  it("a joined record leads to the one it was joined with, once, over every join", () => {
    using db = testDatabase();
    const first = register(db, { familyName: "Maidenname", number: "1" });
    const second = register(db, { familyName: "Middlename", number: "2" });
    const last = register(db, { familyName: "Nowname", number: "3" });
    change(db, first, { joinedInto: second });
    change(db, second, { joinedInto: last });
    expect(findPatient(db, "maidenname").patients).toMatchObject([
      { id: last, familyName: "Nowname", number: "3", joined: { familyName: "Maidenname", number: "1" } },
    ]);
    expect(findPatient(db, "ottoline").patients).toMatchObject([{ id: last, joined: null }]);
  });

  it("a record joined with one that was undone leads nowhere", () => {
    using db = testDatabase();
    const gone = register(db, { number: "1" });
    const joined = register(db, { familyName: "Joined", number: "2" });
    change(db, joined, { joinedInto: gone });
    change(db, gone, { withdrawnAt: 1_790_000_000_000 });
    expect(idsFor(db, "joined")).toEqual([]);
  });
});

it("everyone in a database of the first release is found by name, number, telephone and birth date", () => {
  using folder = testFolder();
  const file = folder.in("clinic.sqlite");
  restoreImage("0000_opening", file);
  migrateFile(file);
  const db = openDatabase(file);
  const ids = db.sqlite.prepare<[], string>("select id from patients").pluck().all();
  expect(ids.length).toBeGreaterThan(4);
  for (const id of ids) {
    const patient = patientById(db, id);
    const { telephones } = contactSchema.parse(patient?.contact);
    expect(idsFor(db, `${patient?.givenName} ${patient?.familyName}`)).toContain(id);
    for (const { value } of identifiersOf(db, id))
      expect(findPatient(db, value).patients[0]).toMatchObject({ id, isNumbered: true });
    for (const { number } of telephones) expect(idsFor(db, number.replace(" ", "-"))).toContain(id);
    expect(patient?.birthOn === null || idsFor(db, patient?.birthOn ?? "").includes(id)).toBe(true);
  }
  expect(idsFor(db, "x77")).toHaveLength(1);
  db.sqlite.close();
});
