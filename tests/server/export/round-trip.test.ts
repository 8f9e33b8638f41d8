import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { openDatabase } from "#db/connection.ts";
import { addAct } from "#db/queries/acts.ts";
import { appendEvent } from "#db/queries/events.ts";
import { recordCounts } from "#db/queries/record-rows.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { runTypeScript } from "#server/commands/run.mjs";
import { newId } from "#server/ids.ts";
import { recordReading } from "#server/output/record-reading.ts";
import { joinRecords } from "#server/record/join-records.ts";
import { rebuildAll } from "#server/record/rebuild.ts";
import { toStored } from "#server/record/stored-event.ts";
import { zone } from "#shared/day/instant.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";
import { room } from "#tests/factories/visit.ts";
import { anyHistory, anyLife } from "#tests/support/any-history.ts";
import { people, SEEDED_AT } from "#tests/support/database.ts";
import { converted, placed } from "#tests/support/factories.ts";
import { testFolder } from "#tests/support/folder.ts";
import { addInventedPatient, clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { expectSame, exportedLines, roundTrip } from "#tests/support/record-file.ts";
import { command, history } from "#tests/support/told.ts";

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

const { id: _id, sort: _sort, name: _name, ...facts } = shelfType();
const shelfFacts = JSON.stringify(facts);
const rooms = JSON.stringify({ rooms: [room()] });

/** A row in every table that the story of one tube leaves empty: joined, withdrawn, approved, proposed, brought in, seen. */
function fillTheRest(db: Database): void {
  addInventedPatient(db, "patient-0", "000419");
  db.sqlite.exec(`
    update patients set joined_into = 'patient-1', withdrawn_at = ${SEEDED_AT} where id = 'patient-0';
    insert into protocol_versions select 2, rows, 'ours', 'staff-physician', '2026-02-03', created_at, '["staff-lead","staff-physician"]', 1 from protocol_versions;
    insert into patient_changes select 'change-1', 'patient-1', id, 'null', '{"familyName":"Brackenfold"}', ${SEEDED_AT} from acts;
    insert into patient_changes select 'change-2', 'patient-1', id, '{"a":1}', '{"a":[null,true,"\u2028"]}', ${SEEDED_AT} from acts;
    insert into proposals values
      ('proposal-1', 'patient-1', 'tube-1', 'exchange', '{"targetOn":null}', '{}', 'rules 3', ${SEEDED_AT}, null);
    insert into sheet_batches select id, 'list "of" tubes.csv', 150 from acts;
    insert into sheet_rows select id, 7, 'abc', 'patient-1', 'tube-1', '{}' from acts;
    insert into sheet_columns values ('tube and side', 'kind', ${SEEDED_AT});
    insert into shelf_types select 'type-1', 'wire', 'Standard 0.035', 'standard 0.035', '${shelfFacts}', 1, recorded_at from acts;
    insert into shelf_changes select 'shelf-1', 'type-1', id, 'null',
      '{"sort":"wire","name":"Standard 0.035","facts":${shelfFacts},"inUse":true}', recorded_at from acts;
    insert into clinic_changes select 'clinic-1', id, '{"phone":""}', '{"phone":"555 0100"}', recorded_at from acts;
    insert into room_versions values (1, '{"rooms":[]}', ${SEEDED_AT}), (2, '${rooms}', ${SEEDED_AT});
    insert into reads values (7, ${SEEDED_AT}, 'staff-nurse', 'tube.view', 'tube', 'tube-1');
  `);
  const texts = { drained: "25", flushGiven: "8", to: "1 jun 2026 08:00" };
  const about = { actId: newId(), lastSeen: 9, patientId: "patient-1", tubeId: "tube-1" };
  recordReading({ db, staff: people.nurse }, { ...about, texts });
}

describe("export, import, export", () => {
  it("of two records that were joined gives one record there too", () => {
    using db = clinicWithPatient();
    // Joined into a record that comes after it in every order of ids.
    addInventedPatient(db, "patient-0", "000418");
    recordAs(db, [{ ...command(placed({ tube: "tube-9", side: "right" })), eventId: "b1" }], "patient-0");
    recordAs(db, [{ ...command(placed()), eventId: "a1" }]);
    const texts = { how: "asked at the desk" };
    const input = { actId: newId(), patientId: "patient-1", otherId: "patient-0", texts };
    joinRecords({ db, staff: people.nurse }, input);
    expectSame(roundTrip(db));
  });

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
          expectSame(roundTrip(db));
        }),
        { numRuns: CASES },
      );
    },
    120_000,
  );

  it("of the invented clinic too", async () => {
    using folder = testFolder();
    const file = folder.in("demo.sqlite");
    await runTypeScript("server/commands/migrate.ts", file);
    await runTypeScript("seed-demo/main.ts", file);
    const db = openDatabase(file);
    const trip = roundTrip(db);
    expectSame(trip);
    const counts = recordCounts(db);
    expect(trip.imported.rows).toBe(Object.values(counts).reduce((sum, count) => sum + count, 0));
    for (const name of ["patients", "patient_changes", "acts", "events", "event_tubes", "readings"] as const)
      expect(counts[name]).toBeGreaterThan(10);
    db.sqlite.close();
  }, 120_000);

  it("of a clinic that holds something in every table", () => {
    using db = clinicWithPatient();
    recordAs(db, [command(placed({ on: "2026-05-29" }))]);
    fillTheRest(db);
    expect(Object.entries(recordCounts(db)).filter(([, count]) => count === 0)).toEqual([]);
    expectSame(roundTrip(db));
  });

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
