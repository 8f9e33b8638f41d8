import { expect } from "vitest";
import { compareProjections } from "#db/compare-projections.ts";
import { type RecordTableName, recordTable, recordTableNames } from "#db/record-tables.ts";
import type { Database } from "#db/sqlite.ts";
import { importRecord } from "#server/export/import-record.ts";
import { recordLines } from "#server/export/record-lines.ts";
import { emptyDatabase } from "#tests/support/database.ts";

/** The lines of an export without their ends. */
export const exportedLines = (db: Database): string[] =>
  [...recordLines(db)].map((line) => line.replace(/\n$/, ""));

/** Brings lines into an empty database. */
export const bringIn = (db: Database, lines: readonly (string | null)[]) =>
  importRecord(db, { file: "record.json", lines });

/** Tables by the form of the file that brought them. */
const broughtBy = {
  shelf_types: 3,
  shelf_changes: 3,
  clinic_changes: 5,
  room_versions: 6,
} as const satisfies Partial<Record<RecordTableName, number>>;

/** Cells of a version of the protocol that form 5 brought. */
const DRAFTED = /,"drafted_by":(?:null|\[[^\]]*\]),"approved_alone":(?:null|true|false)/;

/** An export of today as a file of an earlier form says it; what later forms brought is empty here. */
export function inForm(version: 1 | 2 | 3 | 4 | 5, lines: readonly string[]): string[] {
  const { rows, tables, ...head } = JSON.parse(`${lines[0]}}}`);
  const later: readonly string[] = Object.entries(broughtBy).flatMap(([name, form]) =>
    form > version ? [name] : [],
  );
  const told = Object.entries(rows as object).filter(([name]) => !later.includes(name));
  const first = JSON.stringify({ ...head, version, rows: Object.fromEntries(told), tables }).slice(0, -2);
  return later.reduce(
    (left, name) => {
      const opens = left.indexOf(`"${name}":[`);
      expect(left[opens + 1]).toBe("],");
      return left.toSpliced(opens, 2);
    },
    [first, ...lines.slice(1).map((line) => (version < 5 ? line.replace(DRAFTED, "") : line))],
  );
}

/** The first line but for the time stamp, and every other. */
export const withoutStamp = ([head = "", ...rest]: readonly string[]): string[] => [
  head.replace(/"exportedAt":"[^"]+"/, ""),
  ...rest,
];

/** Every row of the record as the database holds it, but for what an export withholds. */
const storedRows = ({ sqlite }: Database) =>
  Object.fromEntries(
    recordTableNames.map((name) => {
      const { order, withheld = {} } = recordTable(name);
      const rows = sqlite
        .prepare<[], Record<string, unknown>>(`select * from "${name}" order by ${order.join(", ")}`)
        .all();
      return [name, rows.map((row) => ({ ...row, ...withheld }))];
    }),
  );

/** An export of a database and of the second one that brought it in, what both hold, and where their projections differ. */
export function roundTrip(db: Database) {
  using second = emptyDatabase();
  const sent = exportedLines(db);
  const imported = bringIn(second, sent);
  return {
    sent: withoutStamp(sent),
    back: withoutStamp(exportedLines(second)),
    imported,
    held: storedRows(db),
    holds: storedRows(second),
    differences: compareProjections(db, second),
  };
}

/** The round trip loses nothing and changes nothing. */
export function expectSame({ sent, back, held, holds, differences }: ReturnType<typeof roundTrip>): void {
  expect(back).toEqual(sent);
  expect(holds).toEqual(held);
  expect(differences).toEqual([]);
}
