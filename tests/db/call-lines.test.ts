import { expect, it } from "vitest";
import { compareProjections } from "#db/compare-projections.ts";
import { openDatabase } from "#db/connection.ts";
import { migrateFile } from "#db/migrate.ts";
import { emptyProjections, projectionOf } from "#db/queries/projections.ts";
import { inTransaction } from "#db/transaction.ts";
import { rebuildAll } from "#server/record/rebuild.ts";
import { testDatabase } from "#tests/support/database.ts";
import { died, exchanged, placed, voided } from "#tests/support/factories.ts";
import { testFolder } from "#tests/support/folder.ts";
import { keptImages, restoreImage } from "#tests/support/images.ts";
import { addInventedPatient, clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { command } from "#tests/support/told.ts";

const lineOf = (db: Parameters<typeof projectionOf>[0]) => projectionOf(db, "patient-1").callLine;

it("a patient's line is written with each entry, goes with the last step that asks for a call, and comes back with it", () => {
  using db = clinicWithPatient();
  expect(lineOf(db)).toBeUndefined();
  recordAs(db, [{ ...command(placed()), eventId: "e1" }]);
  expect(lineOf(db)).toMatchObject({ dueOn: "2026-08-17", attemptsLeft: 3, flagPending: false });
  const stood = lineOf(db);
  recordAs(db, [{ ...command(died({ on: "2026-09-01" })), eventId: "e2" }]);
  expect(lineOf(db)).toBeUndefined();
  recordAs(db, [command({ ...voided("e2"), id: "e3" })]);
  expect(lineOf(db)).toEqual(stood);
});

it("a rebuild gives the same lines", () => {
  using db = testDatabase();
  using fresh = testDatabase();
  for (const each of [db, fresh]) {
    addInventedPatient(each, "patient-1", "1");
    recordAs(each, [
      { ...command(placed()), eventId: "e1" },
      { ...command(exchanged({ on: "2026-10-30" })), eventId: "e2" },
    ]);
  }
  inTransaction(fresh, emptyProjections);
  expect(lineOf(fresh)).toBeUndefined();
  rebuildAll(fresh);
  expect(compareProjections(db, fresh)).toEqual([]);
  expect(lineOf(fresh)).toBeDefined();
});

it("a line cannot say what is no day, no time or no count", () => {
  using db = clinicWithPatient();
  recordAs(db, [{ ...command(placed()), eventId: "e1" }]);
  for (const set of [
    "due_on = '2026-02-31'",
    "next_time = '9:30'",
    "next_part = 'night'",
    "attempts_left = -1",
    "flag_pending = 2",
    "line = '{'",
  ])
    expect(() => db.sqlite.exec(`update call_lines set ${set}`), set).toThrow(/CHECK/);
});

it.each(keptImages())("upgraded from %s, nobody whom an open step asks to ring is missing", (name) => {
  using folder = testFolder();
  const file = folder.in("clinic.sqlite");
  restoreImage(name, file);
  migrateFile(file);
  const { sqlite } = openDatabase(file);
  const asked = sqlite
    .prepare(
      "select patient_id, min(due_on) from open_steps where kind = 'call' group by patient_id order by 1",
    )
    .raw()
    .all();
  expect(asked.length).toBeGreaterThan(0);
  const listed = sqlite.prepare("select patient_id, due_on from call_lines where due_on <= ?").raw();
  for (const [patientId, dueOn] of asked as [string, string][])
    expect(listed.all(dueOn).map((row) => (row as readonly string[])[0])).toContain(patientId);
  sqlite.close();
});
