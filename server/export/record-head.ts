import * as z from "zod";
import { type RecordTableName, recordTableNames } from "#db/record-tables.ts";

/** What a file of the whole record says that it is. */
export const RECORD_FORMAT = "dwellbook record";

/**
 * The form of the rows. Raised with every change of a table that is exported; an older form is then lifted row by row when it is
 * brought in.
 */
export const RECORD_VERSION = 6;

/** Tables that a file of an earlier form does not have, by the form that brought them. */
const cameWith: Readonly<Record<number, readonly RecordTableName[]>> = {
  3: ["shelf_types", "shelf_changes"],
  5: ["clinic_changes"],
  6: ["room_versions"],
};

/** Enough to tell whose file it is and whether this code reads it. */
export const formSchema = z.object({
  format: z.literal(RECORD_FORMAT),
  version: z.int().min(1),
  release: z.string(),
});

/** How many rows each table has that a file of that form tells. */
function countsOf(version: number) {
  const later = Object.entries(cameWith).flatMap(([form, names]) => (Number(form) > version ? names : []));
  const told = recordTableNames.filter((name) => !later.includes(name));
  return { ...Object.fromEntries(told.map((name) => [name, z.int().min(0)])), clinic: z.literal(1) };
}

/** The first line of a file of that form: what it is, when it was written, and how many rows each table has. */
export const headSchemaOf = (version: number) =>
  z.strictObject({
    format: z.literal(RECORD_FORMAT),
    version: z.literal(version),
    release: z.string(),
    exportedAt: z.iso.datetime(),
    rows: z.strictObject(countsOf(version)),
    tables: z.strictObject({}),
  });

/** What stands behind the head on its line and is closed on the last, so that head and tables are one JSON value. */
export const HEAD_END = ',"tables":{';
export const FILE_END = "}}";
