import * as z from "zod";
import { recordTableNames } from "#db/record-tables.ts";

/** What a file of the whole record says that it is. */
export const RECORD_FORMAT = "dwellbook record";

/**
 * The form of the rows. Raised with every change of a table that is exported; an older form is then lifted row by row when it is
 * brought in.
 */
export const RECORD_VERSION = 2;

/** Enough to tell whose file it is and whether this code reads it. */
export const formSchema = z.object({
  format: z.literal(RECORD_FORMAT),
  version: z.int().min(1),
  release: z.string(),
});

const counts = {
  ...Object.fromEntries(recordTableNames.map((name) => [name, z.int().min(0)])),
  clinic: z.literal(1),
};

/** The first line of the file: what it is, when it was written, and how many rows each table has. */
export const headSchema = z.strictObject({
  format: z.literal(RECORD_FORMAT),
  version: z.int().min(1).max(RECORD_VERSION),
  release: z.string(),
  exportedAt: z.iso.datetime(),
  rows: z.strictObject(counts),
  tables: z.strictObject({}),
});

/** What stands behind the head on its line and is closed on the last, so that head and tables are one JSON value. */
export const HEAD_END = ',"tables":{';
export const FILE_END = "}}";
