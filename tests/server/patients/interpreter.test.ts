import { expect, it } from "vitest";
import { patientById } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { correctPatient } from "#server/patients/correct-patient.ts";
import { registerPatient } from "#server/patients/register-patient.ts";
import { people, testDatabase } from "#tests/support/database.ts";

const doing = (db: Database) => ({ db, staff: people.nurse });
const fern = { familyName: "Fern", givenName: "Ada", birthOn: "?", number: "4711", issuer: "Quillmere" };
const needed = (db: Database, id: string) => patientById(db, id)?.needsInterpreter;

const register = (db: Database, texts: Record<string, string>): string =>
  registerPatient(doing(db), { actId: newId(), texts: { ...fern, ...texts } }).patientId;

it.each([
  [{}, null],
  [{ needsInterpreter: "" }, null],
  [{ needsInterpreter: "?" }, null],
  [{ needsInterpreter: "no" }, false],
  [{ needsInterpreter: "yes" }, true],
])("registered with %j, an interpreter is needed: %s", (texts, stored) => {
  using db = testDatabase();
  expect(needed(db, register(db, texts))).toBe(stored);
});

it.each([
  ["yes", "", null],
  ["", "no", false],
  ["no", "?", null],
])("%j corrected to %j is %s", (before, after, stored) => {
  using db = testDatabase();
  const patientId = register(db, { needsInterpreter: before });
  const lastUpdatedAt = patientById(db, patientId)?.updatedAt ?? (0 as never);
  const texts = { ...fern, needsInterpreter: after };
  correctPatient(doing(db), { actId: newId(), patientId, lastUpdatedAt, texts });
  expect(needed(db, patientId)).toBe(stored);
});
