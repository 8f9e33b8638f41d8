import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { openDatabase } from "#db/connection.ts";
import { addAct } from "#db/queries/acts.ts";
import { appendEvent } from "#db/queries/events.ts";
import { recordCounts } from "#db/queries/record-rows.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { runTypeScript } from "#server/commands/run.mjs";
import { rebuildAll } from "#server/record/rebuild.ts";
import { toStored } from "#server/record/stored-event.ts";
import { zone } from "#shared/day/instant.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { anyHistory, anyLife } from "#tests/support/any-history.ts";
import { people, SEEDED_AT } from "#tests/support/database.ts";
import { converted, history, placed } from "#tests/support/factories.ts";
import { testFolder } from "#tests/support/folder.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";
import { exportedLines, roundTrip } from "#tests/support/record-file.ts";

/** Fewer than elsewhere: each makes two databases. */
const CASES = 40;

/** What the tables take of a history: no event names a tube twice, and an amendment follows what it amends. */
function writable(events: readonly TubeEvent[]): readonly TubeEvent[] {
  const before = new Set<string>();
  return events.filter(({ id, amends, tubes }) => {
    const fits = new Set(tubes).size === tubes.length && (amends === null || before.has(amends));
    if (fits) before.add(id);
    return fits;
  });
}

/** Writes a history past all rules. */
function write(db: Database, events: readonly TubeEvent[]): void {
  const by = { patientId: "patient-1", actId: "act-1", recordedAt: SEEDED_AT, recordedBy: people.nurse.id };
  inTransaction(db, (tx) => {
    for (const event of writable(events))
      appendEvent(tx, toStored(event, { ...by, zone: zone("Europe/London") }));
    const { recordedAt } = by;
    addAct(tx, {
      id: "act-1",
      staffId: people.nurse.id,
      command: "test",
      inputHash: "-",
      result: "null",
      recordedAt,
    });
    rebuildAll(tx);
  });
}

describe("export, import, export", () => {
  it.each([
    ["histories that no clinic would write", anyHistory],
    ["believable lives", anyLife],
  ])(
    "of %s gives the same file and the same tubes and steps",
    (_, arbitrary) => {
      fc.assert(
        fc.property(arbitrary, (events) => {
          using db = clinicWithPatient();
          write(db, events);
          const { sent, back, differences } = roundTrip(db);
          expect(back).toEqual(sent);
          expect(differences).toEqual([]);
        }),
        { numRuns: CASES },
      );
    },
    120_000,
  );

  it("of the invented clinic too, with every table of its own filled", async () => {
    using folder = testFolder();
    const file = folder.in("demo.sqlite");
    await runTypeScript("server/commands/migrate.ts", file);
    await runTypeScript("seed-demo/main.ts", file);
    const db = openDatabase(file);
    const { sent, back, imported, differences } = roundTrip(db);
    expect(back).toEqual(sent);
    expect(differences).toEqual([]);
    const counts = recordCounts(db);
    expect(imported.rows).toBe(Object.values(counts).reduce((sum, count) => sum + count, 0));
    for (const name of ["patients", "patient_changes", "acts", "events", "event_tubes", "readings"] as const)
      expect(counts[name]).toBeGreaterThan(10);
    db.sqlite.close();
  }, 120_000);

  it("keeps the order in which an event names its tubes", () => {
    using db = clinicWithPatient();
    const told = [placed({ tube: "z-tube" }), converted({ closes: "z-tube", opens: "a-tube", number: 2 })];
    write(db, history(...told));
    expect(exportedLines(db).filter((line) => line.startsWith('{"event_id":"e2"'))).toEqual([
      '{"event_id":"e2","tube_id":"z-tube"},',
      '{"event_id":"e2","tube_id":"a-tube"}',
    ]);
    expect(roundTrip(db)).toMatchObject({ differences: [] });
  });
});
