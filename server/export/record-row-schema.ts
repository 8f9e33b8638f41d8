import * as z from "zod";
import type { ReadingRow } from "#db/queries/readings.ts";
import { type RecordColumn, type RecordRow, recordColumns } from "#db/queries/record-rows.ts";
import type { RecordTableName } from "#db/record-tables.ts";
import { readingEntry } from "#server/output/stored-reading.ts";
import { clinicCalendarSchema } from "#shared/day/clinic-days-schema.ts";
import { instantSchema, zoneSchema } from "#shared/day/instant-schema.ts";
import { liftProtocol } from "#shared/protocol/lift-protocol.ts";
import { protocolSchema } from "#shared/protocol/protocol.ts";
import { contactSchema } from "#shared/record/patient/patient-details.ts";
import { shelfTypeSchema } from "#shared/shelf/shelf-type.ts";
import { eventKinds } from "#shared/tube/event-kinds.ts";
import { lift } from "#shared/tube/lift.ts";
import { roomsSchema } from "#shared/visit/room-schema.ts";

/** By type and, where a name promises more, by name: columns that end in `_at` are instants. */
function cellSchema({ name, type }: RecordColumn): z.ZodType {
  if (name === "at" || name.endsWith("_at")) return instantSchema;
  if (name === "zone") return zoneSchema;
  switch (type) {
    case "text":
      return z.string();
    case "integer":
      return z.int();
    case "flag":
      return z.boolean();
    case "json":
      return z.json();
  }
}

const objectSchema = z.record(z.string(), z.unknown());

function readsAsReading(row: RecordRow): boolean {
  try {
    readingEntry(row as Pick<ReadingRow, "id" | "payload" | "replaces" | "voided">, 1);
    return true;
  } catch (error) {
    if (error instanceof z.ZodError) return false;
    throw error;
  }
}

function readsAsEvent({ kind: said, payload_version, payload }: RecordRow): boolean {
  const kind = eventKinds.find((known) => known === said);
  return kind !== undefined && lift(kind, Number(payload_version), payload).ok;
}

const readsAsType = (sort: unknown, name: unknown, facts: unknown): boolean =>
  shelfTypeSchema.safeParse({ ...objectSchema.safeParse(facts).data, sort, name }).success;

const keptSchema = z.strictObject({
  sort: z.unknown(),
  name: z.unknown(),
  facts: z.unknown(),
  inUse: z.boolean(),
});

function isKeptType(kept: unknown): boolean {
  const read = keptSchema.safeParse(kept);
  return read.success && readsAsType(read.data.sort, read.data.name, read.data.facts);
}

const settingsSchema = z.strictObject({ phone: z.string() });
const isSettings = (kept: unknown): boolean => settingsSchema.safeParse(kept).success;

/** What a screen reads out of the JSON of a row: the column, and whether it can be read. */
const contents: Partial<
  Record<RecordTableName, readonly [column: string, reads: (row: RecordRow) => boolean]>
> = {
  protocol_versions: [
    "rows",
    ({ rows, version }) =>
      protocolSchema.safeParse({
        ...objectSchema.safeParse(liftProtocol(rows)).data,
        version,
        approved: null,
      }).success,
  ],
  calendar_versions: [
    "content",
    ({ content, version }) =>
      clinicCalendarSchema.safeParse({ ...objectSchema.safeParse(content).data, version }).success,
  ],
  room_versions: ["content", ({ content }) => roomsSchema.safeParse(content).success],
  // Partial: a contact that was written before a field of it came lacks that field.
  patients: ["contact", ({ contact }) => contactSchema.partial().safeParse(contact).success],
  events: ["payload", readsAsEvent],
  readings: ["payload", readsAsReading],
  clinic_changes: ["after", ({ before, after }) => isSettings(before) && isSettings(after)],
  shelf_types: ["facts", ({ sort, name, facts }) => readsAsType(sort, name, facts)],
  shelf_changes: [
    "after",
    ({ before, after }) => (before === null || isKeptType(before)) && isKeptType(after),
  ],
};

/** The strict schema of a row of that table, from the columns of the table and from what its JSON must hold. */
export function recordRowSchema(name: RecordTableName): z.ZodType<RecordRow> {
  const cells = recordColumns(name).map((column): [string, z.ZodType] => [
    column.name,
    column.nullable ? cellSchema(column).nullable() : cellSchema(column),
  ]);
  const row = z.strictObject(Object.fromEntries(cells));
  const content = contents[name];
  if (content === undefined) return row;
  const [column, reads] = content;
  return row.refine(reads, { path: [column] });
}
