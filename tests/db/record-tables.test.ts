import { getTableConfig } from "drizzle-orm/sqlite-core";
import { describe, expect, it } from "vitest";
import { recordColumns } from "#db/queries/record-rows.ts";
import { disposableTables, type RecordTableName, recordTable, recordTableNames } from "#db/record-tables.ts";
import { RECORD_VERSION } from "#server/export/record-head.ts";
import { testDatabase } from "#tests/support/database.ts";

/** Form 6 of the file: form 5, and the clinic's rooms. A change here is another form: raise RECORD_VERSION and lift rows of the one before. */
const form6: Record<RecordTableName, string> = {
  clinic: "id name zone phone is_demo clock_offset_ms",
  staff: "id user_name full_name role is_approver created_at closed_at?",
  protocol_versions: "version rows note approved_by? approved_on? created_at drafted_by? approved_alone?",
  calendar_versions: "version content created_at",
  room_versions: "version content created_at",
  patients:
    "id family_name given_name birth_on? language needs_interpreter? contact search updated_at withdrawn_at? joined_into?",
  patient_identifiers: "patient_id place issuer value",
  acts: "id staff_id command input_hash result recorded_at",
  clinic_changes: "id act_id before after at",
  patient_changes: "id patient_id act_id before? after at",
  events:
    "id patient_id seq act_id kind payload_version payload precision occurred_earliest? occurred_latest? occurred_at? zone day_sequence recorded_at recorded_by amends? pins_protocol? pins_calendar?",
  event_tubes: "event_id tube_id",
  readings:
    "id patient_id tube_id act_id from_at? to_at zone gross_ul? basis flush_given_ul? payload replaces? voided recorded_at recorded_by",
  proposals: "id patient_id tube_id step_kind stood proposed cause created_at settled_by_event?",
  sheet_batches: "act_id file_name rows_in_sheet",
  sheet_rows: "act_id row digest patient_id tube_id typed",
  sheet_columns: "heading field updated_at",
  shelf_types: "id sort name name_key facts in_use updated_at",
  shelf_changes: "id type_id act_id before? after at",
  reads: "id at staff_id procedure subject_kind subject_id",
};

describe("the tables of an export", () => {
  it("are every table but those that are named as disposable, with a reason", () => {
    using db = testDatabase();
    const tables = db.sqlite
      .prepare<[], string>("select name from sqlite_schema where type = 'table' order by name")
      .pluck()
      .all();
    expect([...recordTableNames, ...Object.keys(disposableTables)].toSorted()).toEqual(tables);
    for (const reason of Object.values(disposableTables)) expect(reason).toMatch(/^[A-Z].{10,}\.$/);
  });

  it("have the columns of the form that the file says", () => {
    expect(RECORD_VERSION).toBe(6);
    const told = recordTableNames.map((name) => [
      name,
      recordColumns(name)
        .map((column) => (column.nullable ? `${column.name}?` : column.name))
        .join(" "),
    ]);
    expect(Object.fromEntries(told)).toEqual(form6);
  });

  it.each(recordTableNames)("%s has an order that leaves no two rows to chance", (name) => {
    const { table, order } = recordTable(name);
    const { primaryKeys, uniqueConstraints, columns } = getTableConfig(table);
    const keys = [
      ["rowid"],
      ...columns.filter(({ primary }) => primary).map((column) => [column.name]),
      ...[...primaryKeys, ...uniqueConstraints].map((key) => key.columns.map((column) => column.name)),
    ];
    expect(keys.some((key) => key.every((column) => order.includes(column)))).toBe(true);
  });
});
