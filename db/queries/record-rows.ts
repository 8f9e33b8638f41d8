import Sqlite from "better-sqlite3";
import type { AnySQLiteColumn } from "drizzle-orm/sqlite-core";
import { keptColumns, type RecordTableName, recordTable, recordTableNames } from "#db/record-tables.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";

/** One row by the names of its columns: JSON as a value, flags as true or false. */
export type RecordRow = Readonly<Record<string, unknown>>;

export type RecordColumn = {
  readonly name: string;
  readonly type: "text" | "integer" | "flag" | "json";
  readonly nullable: boolean;
};

const listOf = (columns: readonly AnySQLiteColumn[]): string =>
  columns.map(({ name }) => `"${name}"`).join(", ");

function typeOf({ dataType }: AnySQLiteColumn): RecordColumn["type"] {
  switch (dataType) {
    case "string":
      return "text";
    case "number":
      return "integer";
    case "boolean":
      return "flag";
    case "json":
      return "json";
    default:
      throw new Error(`the record knows no column of ${dataType}`);
  }
}

/** What a row of a table consists of in an export. */
export const recordColumns = (name: RecordTableName): readonly RecordColumn[] =>
  keptColumns(name).map((column) => ({
    name: column.name,
    type: typeOf(column),
    nullable: !column.notNull,
  }));

/** How many rows each table holds. */
export const recordCounts = ({ sqlite }: Database): Record<RecordTableName, number> =>
  Object.fromEntries(
    recordTableNames.map((name) => [
      name,
      sqlite.prepare<[], number>(`select count(*) from "${name}"`).pluck().get() ?? 0,
    ]),
  ) as Record<RecordTableName, number>;

/** Every row of a table in its order, one after the other: a connection that is read like this writes nothing meanwhile. */
export function* recordRows({ sqlite }: Database, name: RecordTableName): Generator<RecordRow> {
  const columns = keptColumns(name);
  const order = recordTable(name).order.join(", ");
  const rows = sqlite
    .prepare<[], unknown[]>(`select ${listOf(columns)} from "${name}" order by ${order}`)
    .raw();
  for (const values of rows.iterate()) {
    yield Object.fromEntries(
      columns.map((column, at) => {
        const value = values[at];
        return [column.name, value === null ? null : column.mapFromDriverValue(value)];
      }),
    );
  }
}

const isRefusedRow = (error: unknown): boolean =>
  error instanceof Sqlite.SqliteError && error.code.startsWith("SQLITE_CONSTRAINT");

/**
 * Adds rows of one table as an export told them. False for a row that the table's own checks refuse; whether it points somewhere is
 * asked at the end, by `rowsThatPointNowhere`.
 */
export function recordAdder(tx: Tx, name: RecordTableName): (row: RecordRow) => boolean {
  const columns = keptColumns(name);
  const withheld = Object.entries(recordTable(name).withheld ?? {});
  const names = [listOf(columns), ...withheld.map(([column]) => `"${column}"`)].join(", ");
  const places = Array.from({ length: columns.length + withheld.length }, () => "?").join(", ");
  const insert = tx.sqlite.prepare<unknown[]>(`insert into "${name}" (${names}) values (${places})`);
  return (row) => {
    const values = columns.map((column) => {
      const value = row[column.name];
      // A JSON column holds JSON's own null, as it does where the program writes it.
      const isNothing = value === null && !column.notNull && column.dataType !== "json";
      return isNothing ? null : column.mapToDriverValue(value);
    });
    try {
      insert.run(...values, ...withheld.map(([, instead]) => instead));
      return true;
    } catch (error) {
      if (isRefusedRow(error)) return false;
      throw error;
    }
  };
}

/** From here to the end of the transaction rows may come in any order. What points nowhere then is asked for, not refused. */
export const deferPointers = ({ sqlite }: Tx): void => void sqlite.pragma("defer_foreign_keys = ON");

export type PointsNowhere = { readonly table: string; readonly row: number; readonly to: string };

type Broken = { readonly table: string; readonly rowid: number; readonly parent: string };

/** A tube is known by its events alone, so no foreign key looks after these. */
const tellOfTubes = ["readings", "proposals", "sheet_rows"] as const satisfies readonly RecordTableName[];

/** The first row that points to one that is not there; its place among the rows of its table counts from 1. */
export function rowThatPointsNowhere({ sqlite }: Tx): PointsNowhere | undefined {
  const placeOf = (table: string, rowid: number): number =>
    sqlite.prepare<[number], number>(`select count(*) from "${table}" where rowid <= ?`).pluck().get(rowid) ??
    0;
  const [broken] = sqlite.pragma("foreign_key_check") as readonly Broken[];
  if (broken !== undefined)
    return { table: broken.table, row: placeOf(broken.table, broken.rowid), to: broken.parent };
  for (const table of tellOfTubes) {
    const rowid = sqlite
      .prepare<[], number>(
        `select rowid from "${table}" where tube_id not in (select tube_id from event_tubes) order by rowid limit 1`,
      )
      .pluck()
      .get();
    if (rowid !== undefined) return { table, row: placeOf(table, rowid), to: "event_tubes" };
  }
  return undefined;
}
