import { writeFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { recordCounts } from "#db/queries/record-rows.ts";
import { addRoomsVersion } from "#db/queries/versions.ts";
import { type RecordTableName, recordTableNames } from "#db/record-tables.ts";
import { inTransaction } from "#db/transaction.ts";
import { fileLines } from "#server/export/file-lines.ts";
import { importRecordFile } from "#server/export/import-record-file.ts";
import { RECORD_VERSION } from "#server/export/record-head.ts";
import { roomsOf } from "#server/rooms/rooms-of.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { emptyDatabase, people, SEEDED_AT, testDatabase } from "#tests/support/database.ts";
import { called, placed } from "#tests/support/factories.ts";
import { testFolder } from "#tests/support/folder.ts";
import { addInventedPatient, clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { bringIn, exportedLines, inForm } from "#tests/support/record-file.ts";
import { refusalsOf } from "#tests/support/refusal.ts";
import { command } from "#tests/support/told.ts";

let good: readonly string[] = [];

beforeAll(() => {
  using db = clinicWithPatient();
  addInventedPatient(db, "patient-2", "000418");
  recordAs(db, [
    { ...command(placed({ on: "2026-05-29" })), eventId: "e1" },
    { ...command(called({ on: "2026-05-30" })), eventId: "e2" },
  ]);
  good = exportedLines(db);
});

/** Where the rows of a table begin in the file. */
const rowsOf = (table: RecordTableName): number => good.indexOf(`"${table}":[`) + 1;

/** The file with one row of a table changed. */
function changed(table: RecordTableName, place: number, change: (row: Record<string, unknown>) => unknown) {
  const at = rowsOf(table) + place - 1;
  const line = good[at] ?? "";
  const comma = line.endsWith(",") ? "," : "";
  const row = JSON.parse(line.replace(/,$/, ""));
  return good.with(at, JSON.stringify(change(row)) + comma);
}

const withHead = (change: (head: Record<string, unknown>) => unknown): string[] => {
  const head = JSON.parse(`${good[0]}}}`);
  return good.with(0, JSON.stringify(change(head)).slice(0, -2));
};

/** What an import refuses; nothing of it may be left. */
function refused(lines: readonly (string | null)[]) {
  using db = emptyDatabase();
  const refusals = refusalsOf(() => bringIn(db, lines));
  expect(Object.values(recordCounts(db)).filter((count) => count > 0)).toEqual([]);
  return refusals;
}

describe("an import", () => {
  it("takes the file that the refusals below are made of", () => {
    expect(refusedNothing()).toEqual([]);
  });

  it.each([
    ["nothing", () => []],
    ["a sheet", () => ["name;tube", "Brackenfold;PCN L"]],
    ["JSON of something else", () => ['{"format":"other","tables":{', "}}"]],
    ["bytes that are no text", () => [null]],
    ["a list without a head", () => ["[", "]"]],
    [
      "a file that was formatted anew",
      () => JSON.stringify(JSON.parse(good.join("\n")), null, 2).split("\n"),
    ],
    ["a head with a name that it does not know", () => withHead((head) => ({ more: 1, ...head }))],
    ["a table that this program does not know", () => good.with(1, '"others":[')],
    ["a table told twice", () => [...good.slice(0, -1), '"reads":[', "]", "}}"]],
  ])("of %s says that it is no record", (_, lines) => {
    expect(refused(lines())).toEqual([{ code: "record-not-one", args: { file: "record.json" } }]);
  });

  it("of a newer form names both forms and the release", () => {
    const lines = withHead((head) => ({
      others: {},
      ...head,
      version: RECORD_VERSION + 1,
      release: "9.1.0",
    }));
    expect(refused(lines)).toEqual([
      {
        code: "record-newer",
        args: { version: RECORD_VERSION + 1, newest: RECORD_VERSION, release: "9.1.0" },
      },
    ]);
  });

  it.each([1, 2] as const)("of form %s, which knew no shelf, is taken with an empty one", (version) => {
    using db = emptyDatabase();
    const before = inForm(version, good);
    expect(before.join()).not.toContain("shelf");
    bringIn(db, before);
    expect(recordCounts(db)).toMatchObject({ patients: 2, shelf_types: 0, shelf_changes: 0 });
  });

  it.each([3, 4] as const)(
    "of form %s, which knew no changes of the clinic, is taken without any",
    (version) => {
      using db = emptyDatabase();
      const before = inForm(version, good);
      expect(before.join()).not.toContain("clinic_changes");
      bringIn(db, before);
      expect(recordCounts(db)).toMatchObject({ patients: 2, clinic_changes: 0 });
    },
  );

  it("of form 5, which knew no rooms, is taken without any", () => {
    using db = emptyDatabase();
    const before = inForm(5, good);
    expect(before.join()).not.toContain("room_versions");
    bringIn(db, before);
    expect(roomsOf(db)).toEqual({ version: 0, rooms: [] });
  });

  it.each([
    ["whose end is missing", (lines: readonly string[]) => lines.slice(0, rowsOf("events") + 1), "events"],
    [
      "that lost its last row",
      (lines: readonly string[]) => lines.toSpliced(rowsOf("events") + 1, 1),
      "events",
    ],
    [
      "that lost a table",
      (lines: readonly string[]) => lines.toSpliced(rowsOf("proposals") - 1, 2),
      "proposals",
    ],
  ])("of a file %s names the table", (_, cut, table) => {
    expect(refused(cut(good))).toEqual([{ code: "record-cut", args: { table } }]);
  });

  it("of a file with more rows than its first line says names the table", () => {
    const lines = withHead((head) => ({ ...head, rows: { ...(head.rows as object), event_tubes: 1 } }));
    expect(refused(lines)).toEqual([{ code: "record-cut", args: { table: "event_tubes" } }]);
  });

  it.each<[string, RecordTableName, (row: Record<string, unknown>) => unknown, string | undefined]>([
    ["a column that is missing", "patients", ({ search: _gone, ...row }) => row, "search"],
    ["a column too many", "staff", (row) => ({ ...row, password_hash: "$argon2id$" }), "password_hash"],
    ["a text where a number stands", "events", (row) => ({ ...row, seq: "1" }), "seq"],
    ["a part of a number", "acts", (row) => ({ ...row, recorded_at: 1.5 }), "recorded_at"],
    ["a moment of another age", "acts", (row) => ({ ...row, recorded_at: 1 - 2 ** 52 }), "recorded_at"],
    [
      "nothing where something must stand",
      "patients",
      (row) => ({ ...row, family_name: null }),
      "family_name",
    ],
    ["a zone that does not exist", "clinic", (row) => ({ ...row, zone: "Mars/Base" }), "zone"],
    ["a kind that this program does not know", "events", (row) => ({ ...row, kind: "wished" }), "payload"],
    ["a payload of another kind", "events", (row) => ({ ...row, kind: "capped" }), "payload"],
    ["a payload of a later version", "events", (row) => ({ ...row, payload_version: 9 }), "payload"],
    ["a contact that is none", "patients", (row) => ({ ...row, contact: { telephones: 5 } }), "contact"],
    ["rows that are no protocol", "protocol_versions", (row) => ({ ...row, rows: {} }), "rows"],
    ["a calendar that is none", "calendar_versions", (row) => ({ ...row, content: 5 }), "content"],
    ["a day that does not exist", "patients", (row) => ({ ...row, birth_on: "2026-02-31" }), undefined],
    ["a role that does not exist", "staff", (row) => ({ ...row, role: "boss" }), undefined],
    ["no row at all", "patients", () => 5, undefined],
  ])("of %s names table and row", (_, table, change, at) => {
    expect(refused(changed(table, 1, change))).toEqual([
      { code: "record-row-damaged", args: { table, row: 1, ...(at !== undefined && { at }) } },
    ]);
  });

  it("of rooms that are none names table and row", () => {
    using db = clinicWithPatient();
    inTransaction(db, (tx) =>
      addRoomsVersion(tx, { version: 1, content: { rooms: [{}] }, createdAt: SEEDED_AT }),
    );
    expect(refused(exportedLines(db))).toEqual([
      { code: "record-row-damaged", args: { table: "room_versions", row: 1, at: "content" } },
    ]);
  });

  it("of two rows with one key names the second", () => {
    expect(refused(changed("patients", 1, (row) => ({ ...row, id: "patient-2" })))).toEqual([
      { code: "record-row-damaged", args: { table: "patients", row: 2 } },
    ]);
  });

  it("of a row that is no JSON, or no text, names table and row", () => {
    const at = rowsOf("events") + 1;
    for (const line of ['{"id":"e2","patient', null, ""])
      expect(refused(good.map((told, index) => (index === at ? line : told)))).toEqual([
        { code: "record-row-damaged", args: { table: "events", row: 2 } },
      ]);
  });

  it.each<[string, RecordTableName, number, Record<string, unknown>, string]>([
    ["a patient", "events", 2, { patient_id: "nobody" }, "patients"],
    ["an act", "events", 1, { act_id: "no-act" }, "acts"],
    ["an entry that it amends", "events", 2, { amends: "e9" }, "events"],
    ["a version of the protocol", "events", 1, { pins_protocol: 7 }, "protocol_versions"],
    ["an account", "acts", 1, { staff_id: "nobody" }, "staff"],
    ["a record that it was joined with", "patients", 1, { joined_into: "nobody" }, "patients"],
  ])("of a row that points to %s not in the file says so", (_, table, row, change, to) => {
    expect(refused(changed(table, row, (told) => ({ ...told, ...change })))).toEqual([
      { code: "record-row-points-nowhere", args: { table, row, to } },
    ]);
  });

  it("of a step given to somebody who is not in the file says so, though only a payload names them", () => {
    const owner = { role: "nurse", staffId: "nobody" };
    const given = {
      kind: "step assigned",
      payload: { step: "exchange", owner },
    };
    const [refusal] = refused(changed("events", 2, (row) => ({ ...row, ...given })));
    expect(refusal).toMatchObject({
      code: "record-row-points-nowhere",
      args: { table: "open_steps", to: "staff" },
    });
  });

  it("into a database that holds a clinic is refused, and leaves it as it was", () => {
    using db = testDatabase();
    const before = recordCounts(db);
    expect(refusalsOf(() => bringIn(db, good))).toMatchObject([{ code: "clinic-already-there" }]);
    expect(recordCounts(db)).toEqual(before);
  });

  it("says no name and no number of a patient when it refuses", () => {
    for (const table of recordTableNames) {
      if (good[rowsOf(table)]?.startsWith("]")) continue;
      const [refusal] = refused(changed(table, 1, (row) => ({ ...row, extra: people.nurse.fullName })));
      const sentence = refusal === undefined ? "" : refusalSentence(refusal);
      expect(sentence).toContain(`Row 1 of ${table} is damaged at "extra".`);
      expect(sentence).not.toMatch(/Nurseworth|Brackenfold|000417/);
    }
  });
});

const refusedNothing = () => {
  using db = emptyDatabase();
  return refusalsOf(() => bringIn(db, good));
};

describe("a file", () => {
  it("is read line by line, whatever ends its lines, and a line that is no text is told apart", () => {
    using folder = testFolder();
    const file = folder.in("lines.json");
    writeFileSync(
      file,
      Buffer.concat([Buffer.from("one\r\ntwö\n"), Buffer.from([0xff, 0x0a]), Buffer.from("end")]),
    );
    expect([...fileLines(file)]).toEqual(["one", "twö", null, "end"]);
    writeFileSync(file, `${"é".repeat(100_000)}\n${"x".repeat(70_000)}`);
    expect([...fileLines(file)].map((line) => line?.length)).toEqual([100_000, 70_000]);
  });

  it("without the end of a line is given up, not read into memory whole", () => {
    using folder = testFolder();
    const file = folder.in("long.json");
    writeFileSync(file, Buffer.alloc(50 * 1024 ** 2, "x"));
    expect([...fileLines(file)]).toEqual([null]);
  });

  it("that is not there, or a folder, is refused by name; a database made for it is gone again", () => {
    using folder = testFolder();
    const database = folder.in("new.sqlite");
    for (const file of [folder.in("nowhere.json"), folder.path])
      expect(refusalsOf(() => importRecordFile({ database, file }))).toEqual([
        { code: "file-missing", args: { file } },
      ]);
    writeFileSync(folder.in("whole.json"), good.join("\n"));
    expect(importRecordFile({ database, file: folder.in("whole.json") })).toMatchObject({ patients: 1 });
    expect(refusalsOf(() => importRecordFile({ database, file: folder.in("whole.json") }))).toEqual([
      { code: "clinic-already-there", args: { file: database } },
    ]);
  });
});
