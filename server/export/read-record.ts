import type { RecordRow } from "#db/queries/record-rows.ts";
import { type RecordTableName, recordTableNames } from "#db/record-tables.ts";
import { liftRecordRow } from "#server/export/lift-record-row.ts";
import { FILE_END, formSchema, HEAD_END, headSchemaOf, RECORD_VERSION } from "#server/export/record-head.ts";
import { recordRowSchema } from "#server/export/record-row-schema.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** One row as it stands in the file; `place` counts the rows of its table from 1. */
export type ReadRow = { readonly table: RecordTableName; readonly place: number; readonly row: RecordRow };

/** A file of the whole record, line by line; null is a line that is no text. `file` is its name, for sentences. */
export type RecordSource = { readonly file: string; readonly lines: Iterable<string | null> };

const TABLE = /^"(\w+)":\[$/;

function jsonOf(text: string | null): unknown {
  try {
    return text === null ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

type Head = { readonly version: number; readonly rows: Readonly<Record<string, number>> };

/** Reads the first line: the form of the rows, and how many each table has. */
function readHead(line: string | null | undefined, file: string): Head {
  const json = line?.endsWith(HEAD_END) ? jsonOf(`${line}${FILE_END}`) : undefined;
  const form = formSchema.safeParse(json);
  if (!form.success) throw new DomainError({ code: "record-not-one", args: { file } });
  const { version, release } = form.data;
  if (version > RECORD_VERSION)
    throw new DomainError({ code: "record-newer", args: { version, release, newest: RECORD_VERSION } });
  const head = headSchemaOf(version).safeParse(json);
  if (!head.success) throw new DomainError({ code: "record-not-one", args: { file } });
  return head.data;
}

type At = { readonly table: RecordTableName; readonly place: number };
type Line = { readonly line: string | null; readonly version: number };

const damaged = ({ table, place }: At, at?: string): DomainError =>
  new DomainError({
    code: "record-row-damaged",
    args: { table, row: place, ...(at !== undefined && at !== "" && { at }) },
  });

const schemas = new Map(recordTableNames.map((name) => [name, recordRowSchema(name)]));

/** A row, without the comma that stands behind every row but the last. */
function readRow({ line, version }: Line, at: At): ReadRow {
  const row = liftRecordRow(at.table, version, jsonOf(line?.replace(/,$/, "") ?? null));
  const read = schemas.get(at.table)?.safeParse(row);
  if (read?.success) return { ...at, row: read.data };
  const issue = read?.error.issues[0];
  const unknownName = issue?.code === "unrecognized_keys" ? issue.keys[0] : undefined;
  throw damaged(at, unknownName ?? issue?.path.map(String).join("."));
}

/** Where the reader stands: in which table, and how many rows of each it has read. */
type Place = { table: RecordTableName | null; readonly read: Map<RecordTableName, number> };

/** A line between tables: one opens, or the file ends. */
function openTable(line: string | null, place: Place): "opened" | "ended" | "neither" {
  if (line === FILE_END) return "ended";
  const named = TABLE.exec(line ?? "")?.[1];
  const table = recordTableNames.find((name) => name === named);
  if (table === undefined || place.read.has(table)) return "neither";
  place.table = table;
  place.read.set(table, 0);
  return "opened";
}

function refuseUnlessWhole(read: Place["read"], rows: Readonly<Record<string, number>>): void {
  const short = recordTableNames.find((name) => read.get(name) !== rows[name]);
  if (short !== undefined) throw new DomainError({ code: "record-cut", args: { table: short } });
}

/**
 * The rows of a file of the whole record, one after the other, each checked by its table. Throws `record-not-one`, `record-newer`,
 * `record-cut` for a table with more or fewer rows than the first line says, `record-row-damaged`.
 */
export function* readRecord({ file, lines }: RecordSource): Generator<ReadRow> {
  const all = lines[Symbol.iterator]();
  const { version, rows } = readHead(all.next().value, file);
  const place: Place = { table: null, read: new Map() };
  for (let next = all.next(); !next.done; next = all.next()) {
    const { table } = place;
    const line = next.value;
    if (table === null) {
      const found = openTable(line, place);
      if (found === "ended") break;
      if (found === "neither") throw new DomainError({ code: "record-not-one", args: { file } });
    } else if (line === "]" || line === "],") {
      place.table = null;
    } else {
      const count = (place.read.get(table) ?? 0) + 1;
      yield readRow({ line, version }, { table, place: count });
      place.read.set(table, count);
    }
  }
  refuseUnlessWhole(place.read, rows);
}
