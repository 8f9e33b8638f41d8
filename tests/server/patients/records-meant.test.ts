import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { recordsMeant } from "#server/patients/records-meant.ts";
import { registerPatient } from "#server/patients/register-patient.ts";
import { joinRecords } from "#server/record/join-records.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { people, testDatabase } from "#tests/support/database.ts";

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date("2026-11-06T12:00:00Z") });
});
afterEach(() => {
  vi.useRealTimers();
});

const doing = (db: Database) => ({ db, staff: people.nurse });
const fern = { familyName: "Doublefern", givenName: "Hesper", birthOn: "9 apr 1973", issuer: "Quillmere" };

const register = (db: Database, texts: Record<string, string>): string =>
  registerPatient(doing(db), { actId: newId(), texts: { ...fern, ...texts } }).patientId;

const ask = (db: Database, patientId: string, says: string, about = "two records of one patient") =>
  recordEvent(doing(db), "reconcile asked", {
    actId: newId(),
    patientId,
    lastSeen: 99,
    texts: { about, says },
  });

const meant = (db: Database, patientId: string) => recordsMeant(db, patientId).map(({ id }) => id);

describe("the records that two records of one patient may speak of", () => {
  it("are named by number first, then those of the same name and birth date", () => {
    using db = testDatabase();
    const self = register(db, { number: "4748" });
    const twin = register(db, { number: "4749", familyName: "DOUBLEFERN" });
    const named = register(db, { number: "F-2209", familyName: "Otherwise", birthOn: "?" });
    register(db, { number: "4750", familyName: "Sameday" });
    ask(db, self, "Fernhollow has a record F-2209.");
    expect(meant(db, self)).toEqual([named, twin]);
    expect(recordsMeant(db, self)[0]).toMatchObject({
      familyName: "Otherwise",
      birthOn: null,
      identifiers: [{ issuer: "Quillmere", value: "F-2209" }],
    });
  });

  it("are those of the same birth date or the same name where none has both", () => {
    using db = testDatabase();
    const self = register(db, { number: "4748" });
    const born = register(db, { number: "4750", familyName: "Aday" });
    const called = register(db, { number: "4751", birthOn: "?" });
    register(db, { number: "4752", familyName: "Stranger", birthOn: "1 may 1950" });
    ask(db, self, "one address");
    expect(meant(db, self)).toEqual([born, called]);
  });

  it("are none where sides do not agree, and none once they are joined", () => {
    using db = testDatabase();
    const self = register(db, { number: "4748" });
    const twin = register(db, { number: "4749" });
    ask(db, self, "the report says right", "sides");
    expect(meant(db, self)).toEqual([]);
    ask(db, self, "one address");
    expect(meant(db, self)).toEqual([twin]);
    joinRecords(doing(db), { actId: newId(), patientId: self, otherId: twin, texts: { how: "asked" } });
    expect(meant(db, self)).toEqual([]);
  });
});
