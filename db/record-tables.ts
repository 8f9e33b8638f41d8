import { getTableColumns } from "drizzle-orm";
import type { AnySQLiteColumn, SQLiteTable } from "drizzle-orm/sqlite-core";
import { acts } from "#db/schema/acts.ts";
import { clinic, clinicChanges } from "#db/schema/clinic.ts";
import { events, eventTubes } from "#db/schema/events.ts";
import { patientChanges, patientIdentifiers, patients } from "#db/schema/patients.ts";
import { proposals } from "#db/schema/projections.ts";
import { readings } from "#db/schema/readings.ts";
import { reads } from "#db/schema/reads.ts";
import { sheetBatches, sheetColumns, sheetRows } from "#db/schema/sheets.ts";
import { shelfChanges, shelfTypes } from "#db/schema/shelf.ts";
import { staff } from "#db/schema/staff.ts";
import { calendarVersions, protocolVersions, roomVersions } from "#db/schema/versions.ts";

type RecordTable = {
  readonly table: SQLiteTable;
  /** Columns that give each row its one place, so that the same state is always told in the same order. */
  readonly order: readonly [string, ...string[]];
  /** Columns that never leave the database, each with what stands in its place after an import. */
  readonly withheld?: Readonly<Record<string, string>>;
};

/** The whole record: every table whose loss would lose something, in the order in which an export tells them. */
export const recordTables = {
  clinic: { table: clinic, order: ["id"] },
  // Without a password nobody signs in to an account: `npm run staff -- password` gives it one.
  staff: { table: staff, order: ["id"], withheld: { password_hash: "" } },
  protocol_versions: { table: protocolVersions, order: ["version"] },
  calendar_versions: { table: calendarVersions, order: ["version"] },
  room_versions: { table: roomVersions, order: ["version"] },
  patients: { table: patients, order: ["id"] },
  patient_identifiers: { table: patientIdentifiers, order: ["patient_id", "place"] },
  acts: { table: acts, order: ["recorded_at", "id"] },
  clinic_changes: { table: clinicChanges, order: ["at", "id"] },
  patient_changes: { table: patientChanges, order: ["patient_id", "at", "id"] },
  events: { table: events, order: ["patient_id", "seq"] },
  // An event names its tubes in an order that only the order of writing keeps.
  event_tubes: { table: eventTubes, order: ["event_id", "rowid"] },
  readings: { table: readings, order: ["recorded_at", "id"] },
  proposals: { table: proposals, order: ["created_at", "id"] },
  sheet_batches: { table: sheetBatches, order: ["act_id"] },
  sheet_rows: { table: sheetRows, order: ["act_id", "row"] },
  sheet_columns: { table: sheetColumns, order: ["heading"] },
  shelf_types: { table: shelfTypes, order: ["id"] },
  shelf_changes: { table: shelfChanges, order: ["at", "id"] },
  reads: { table: reads, order: ["id"] },
} as const satisfies Record<string, RecordTable>;

export type RecordTableName = keyof typeof recordTables;
export const recordTableNames = Object.keys(recordTables) as readonly RecordTableName[];

/** Every other table, with the reason why an export leaves it out. */
export const disposableTables: Readonly<Record<string, string>> = {
  migrations: "Each database makes its own.",
  event_kinds: "The program writes the kinds that it knows whenever it opens a database.",
  tubes: "Computed from events.",
  open_steps: "Computed from events.",
  visits: "Computed from events.",
  next_visits: "Computed from events.",
  patient_states: "Computed from events.",
  call_lines: "Computed from events.",
  protocol_draft: "Rows that nobody has signed: what is signed is a version.",
  drafts: "What was typed and not saved: gone after 7 days.",
  sheets: "A sheet that waits for its answers: gone after 7 days, like a draft.",
  saved_filters: "How one person looks at lists, nothing of the record: saved again under its name.",
  own_orders: "In which order one person goes through a list, nothing of the record: put again.",
  call_holds: "Who rings a patient now, nothing of the record: taken again with the next call.",
  sessions: "Whoever was signed in signs in again.",
  sign_in_refusals: "Waits after wrong sign-ins: forgotten after two hours.",
};

export const recordTable = (name: RecordTableName): RecordTable => recordTables[name];

/** The columns that an export tells, by the names that they have in the database. */
export function keptColumns(name: RecordTableName): readonly AnySQLiteColumn[] {
  const { table, withheld = {} } = recordTable(name);
  const columns: readonly AnySQLiteColumn[] = Object.values(getTableColumns(table));
  return columns.filter((column) => !Object.hasOwn(withheld, column.name));
}
