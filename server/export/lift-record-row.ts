import type { RecordTableName } from "#db/record-tables.ts";
import { RECORD_VERSION } from "#server/export/record-head.ts";

type Cells = Readonly<Record<string, unknown>>;
/** Makes a row of one form of the file into one of the next; never edited once released. */
type Lift = (row: Cells) => Cells;

/**
 * The steps of each table by the form that they start from. From 1 to 2: "no interpreter" was what stood in the form before anybody was
 * asked, and what a list without an answer was given, so it is not known, as the migration says of the same column. From 4 to 5: of a version of the protocol nobody kept who had drafted it.
 */
const steps: Readonly<Record<number, Partial<Record<RecordTableName, Lift>>>> = {
  1: { patients: (row) => (row.needs_interpreter === false ? { ...row, needs_interpreter: null } : row) },
  4: { protocol_versions: (row) => ({ ...row, drafted_by: null, approved_alone: null }) },
};

/** A row of a file of that form as the newest form has it. What is no row is left to its schema to refuse. */
export function liftRecordRow(table: RecordTableName, version: number, row: unknown): unknown {
  if (typeof row !== "object" || row === null) return row;
  let lifted = row as Cells;
  for (let form = version; form < RECORD_VERSION; form += 1)
    lifted = steps[form]?.[table]?.(lifted) ?? lifted;
  return lifted;
}
