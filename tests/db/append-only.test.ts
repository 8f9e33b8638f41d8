import { describe, expect, it } from "vitest";
import { acts } from "#db/schema/acts.ts";
import { clinicChanges } from "#db/schema/clinic.ts";
import { eventKinds, events, eventTubes } from "#db/schema/events.ts";
import { patientChanges, patients } from "#db/schema/patients.ts";
import { readings } from "#db/schema/readings.ts";
import { reads } from "#db/schema/reads.ts";
import { sheetBatches, sheetRows } from "#db/schema/sheets.ts";
import { shelfChanges, shelfTypes } from "#db/schema/shelf.ts";
import { roomVersions } from "#db/schema/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { day } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import { nameKey } from "#shared/shelf/name-key.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";
import { people, SEEDED_AT, testDatabase } from "#tests/support/database.ts";

/** Table, key column, another column. Written out, so that a table taken off the list in the migration fails here. */
const appendOnly = [
  ["acts", "id", "command"],
  ["patient_changes", "id", "after"],
  ["protocol_versions", "version", "note"],
  ["calendar_versions", "version", "content"],
  ["room_versions", "version", "content"],
  ["events", "id", "zone"],
  ["event_tubes", "event_id", "tube_id"],
  ["readings", "id", "basis"],
  ["reads", "id", "procedure"],
  ["sheet_batches", "act_id", "file_name"],
  ["sheet_rows", "act_id", "digest"],
  ["shelf_changes", "id", "after"],
  ["clinic_changes", "id", "after"],
] as const;

const at = SEEDED_AT;
const staffId = people.nurse.id;

/** One row in each table that only grows. */
function fill({ orm }: Database): void {
  const recorded = {
    patientId: "p1",
    actId: "a1",
    zone: zone("Europe/London"),
    recordedAt: at,
    recordedBy: staffId,
  };
  orm
    .insert(acts)
    .values({ id: "a1", staffId, command: "c", inputHash: "h", result: "null", recordedAt: at })
    .run();
  orm
    .insert(patients)
    .values({
      id: "p1",
      familyName: "Testwell",
      givenName: "Ann",
      language: "English",
      needsInterpreter: false,
      contact: {},
      search: "testwell ann",
      updatedAt: at,
    })
    .run();
  orm.insert(patientChanges).values({ id: "pc1", patientId: "p1", actId: "a1", after: {}, at }).run();
  orm.insert(eventKinds).values({ kind: "trial kind" }).run();
  orm
    .insert(events)
    .values({
      ...recorded,
      id: "e1",
      seq: 1,
      kind: "trial kind",
      payloadVersion: 1,
      payload: {},
      precision: "day",
      occurredEarliest: day("2026-01-05"),
      occurredLatest: day("2026-01-05"),
    })
    .run();
  orm.insert(eventTubes).values({ eventId: "e1", tubeId: "t1" }).run();
  orm
    .insert(readings)
    .values({
      ...recorded,
      id: "r1",
      tubeId: "t1",
      toAt: at,
      grossUl: 5000,
      basis: "emptied",
      payload: {},
      voided: false,
    })
    .run();
  orm
    .insert(roomVersions)
    .values({ version: 1, content: { rooms: [] }, createdAt: at })
    .run();
  orm.insert(reads).values({ at, staffId, procedure: "p", subjectKind: "patient", subjectId: "p1" }).run();
  orm.insert(sheetBatches).values({ actId: "a1", fileName: "list.csv", rowsInSheet: 1 }).run();
  orm
    .insert(sheetRows)
    .values({ actId: "a1", row: 2, digest: "d", patientId: "p1", tubeId: "t1", typed: {} })
    .run();
  const { id: _id, sort, name, ...facts } = shelfType();
  orm
    .insert(shelfTypes)
    .values({ id: "s1", sort, name, nameKey: nameKey(name), facts, inUse: true, updatedAt: at })
    .run();
  const after = { sort, name, facts, inUse: true };
  orm
    .insert(clinicChanges)
    .values({ id: "cc1", actId: "a1", before: { phone: "" }, after: { phone: "555 0100" }, at })
    .run();
  orm.insert(shelfChanges).values({ id: "sc1", typeId: "s1", actId: "a1", before: null, after, at }).run();
}

describe("after all migrations", () => {
  it("every table is STRICT", () => {
    using db = testDatabase();
    const tables = db.sqlite.pragma("table_list") as { schema: string; name: string; strict: number }[];
    const ours = tables.filter(({ schema, name }) => schema === "main" && !name.startsWith("sqlite_"));
    expect(ours.filter(({ strict }) => strict !== 1)).toEqual([]);
    expect(ours.length).toBe(36);
  });

  it("a refusing trigger for UPDATE and DELETE stands on exactly the tables that only grow", () => {
    using db = testDatabase();
    const triggers = db.sqlite
      .prepare("select name, tbl_name, sql from sqlite_schema where type = 'trigger' order by name")
      .all() as { name: string; tbl_name: string; sql: string }[];
    const expected = appendOnly.flatMap(([table]) => [`${table}_no_delete`, `${table}_no_update`]);
    expect(triggers.map(({ name }) => name)).toEqual(expected.toSorted());
    for (const { name, tbl_name, sql } of triggers) {
      expect(name.startsWith(tbl_name)).toBe(true);
      expect(sql).toContain(`RAISE(ABORT, '${tbl_name} is append only')`);
    }
  });
});

describe.each(appendOnly)("%s only grows", (table, key, other) => {
  const copied = (source: Database): string[] =>
    (source.sqlite.pragma(`table_info(${table})`) as { name: string }[]).map(({ name }) => `"${name}"`);

  const insert = (columns: string) => `into "${table}" (${columns}) select ${columns} from "${table}"`;

  const attempts: readonly [string, (columns: string) => string][] = [
    ["UPDATE", () => `update "${table}" set "${other}" = "${other}"`],
    ["UPDATE of the key", () => `update "${table}" set "${key}" = "${key}"`],
    ["DELETE", () => `delete from "${table}"`],
    ["REPLACE", (columns) => `replace ${insert(columns)}`],
    ["INSERT OR REPLACE", (columns) => `insert or replace ${insert(columns)}`],
    [
      "upsert",
      (columns) => `insert ${insert(columns)} where true on conflict do update set "${other}" = "${other}"`,
    ],
  ];

  it.each(attempts)("refuses %s", (_, statement) => {
    using db = testDatabase();
    fill(db);
    const before = db.sqlite.prepare(`select * from "${table}"`).all();
    expect(before.length).toBeGreaterThan(0);
    expect(() => db.sqlite.exec(statement(copied(db).join(", ")))).toThrow(`${table} is append only`);
    expect(db.sqlite.prepare(`select * from "${table}"`).all()).toEqual(before);
  });
});
