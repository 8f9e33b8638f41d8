import type * as z from "zod";
import type { Refusal } from "#shared/errors/refusal.ts";
import { blankPlaces, missingLeaves } from "#shared/protocol/rows/blank-places.ts";
import type { Leaf } from "#shared/protocol/rows/leaf.ts";
import { leavesOf, type RowData } from "#shared/protocol/rows/leaves.ts";
import { isBlank, leafMissing, readLeaf } from "#shared/protocol/rows/read-leaf.ts";
import type { FieldShape, RowSort } from "#shared/protocol/rows/row-sorts.ts";
import type { Texts } from "#shared/record/field-spec.ts";

/** More places than any list of a row has. */
const MOST_PLACES = 50;

type Reading = { readonly texts: Texts; readonly blank: ReadonlySet<string> };

/** How many places of a list the texts speak of. */
function placesIn(texts: Texts, list: string): number {
  const numbers = Object.keys(texts)
    .filter((path) => path.startsWith(`${list}.`))
    .map((path) => Number(path.slice(list.length + 1).split(".")[0]))
    .filter((place) => Number.isInteger(place) && place > 0 && place <= MOST_PLACES);
  return Math.max(0, ...numbers);
}

/** A row with as many places as the texts speak of, and nothing in them. */
function emptyRow(fields: readonly FieldShape[], texts: Texts, prefix: string): RowData {
  const named = fields.map((field): readonly [string, unknown] => {
    const path = `${prefix}${field.name}`;
    if (field.made === "leaf") return [field.name, null];
    if (field.made === "group") return [field.name, emptyRow(field.fields, texts, `${path}.`)];
    const places = Array.from({ length: placesIn(texts, path) }, (_, at) =>
      emptyRow(field.fields, texts, `${path}.${at + 1}.`),
    );
    return [field.name, places];
  });
  return Object.fromEntries(named);
}

/** The leaves that a row of this sort has where its texts speak of so many places. */
export const leavesIn = ({ fields }: RowSort, texts: Texts): readonly Leaf[] =>
  leavesOf(fields, emptyRow(fields, texts, ""), 0);

function readField(field: FieldShape, path: string, reading: Reading): unknown {
  if (field.made === "group") return rowFrom(field.fields, `${path}.`, reading);
  if (field.made === "list")
    return Array.from({ length: placesIn(reading.texts, path) }, (_, at) => `${path}.${at + 1}`)
      .filter((place) => !reading.blank.has(place))
      .map((place) => rowFrom(field.fields, `${place}.`, reading));
  const text = reading.texts[path] ?? "";
  if (isBlank(text)) return field.blank;
  const read = readLeaf(field.value, text);
  return read.ok ? read.value : undefined;
}

const rowFrom = (fields: readonly FieldShape[], prefix: string, reading: Reading): RowData =>
  Object.fromEntries(
    fields.map((field) => [field.name, readField(field, `${prefix}${field.name}`, reading)]),
  );

/** A list that its schema wants filled has no place of it: the first of them is asked for. */
function refusalOfIssue({ path }: z.core.$ZodIssue, sort: RowSort): Refusal {
  const named = path.map((part) => (typeof part === "number" ? part + 1 : String(part))).join(".");
  const first = leavesIn(sort, { [`${named}.1.`]: "" }).find((leaf) => leaf.path.startsWith(`${named}.1.`));
  if (first === undefined) return { code: "entry-not-understood", field: named, args: { field: named } };
  const missing = leafMissing(first);
  return missing.ok ? { code: "entry-not-understood" } : { ...missing.refusal, field: first.path };
}

/** What is read of the texts of a row. `none`: every place of it is blank. */
export type RowReading =
  | { readonly read: "row"; readonly row: RowData }
  | { readonly read: "none" }
  | { readonly read: "refused"; readonly refusals: readonly Refusal[] };

/** A row from what was typed in its places, or every refusal with the path of its leaf as the field. */
export function readRow(sort: RowSort, texts: Texts): RowReading {
  const leaves = leavesIn(sort, texts);
  const blank = blankPlaces(leaves, texts);
  if (blank.has("") && sort.mayBeNone) return { read: "none" };
  const unread = leaves.flatMap(({ path, value }): readonly Refusal[] => {
    const read = readLeaf(value, texts[path] ?? "");
    return read.ok ? [] : [{ ...read.refusal, field: path }];
  });
  const refusals = [...unread, ...missingLeaves(leaves, texts)];
  if (refusals.length > 0) return { read: "refused", refusals };
  const row = rowFrom(sort.fields, "", { texts, blank });
  const checked = sort.schema.safeParse(row);
  if (checked.success) return { read: "row", row };
  return { read: "refused", refusals: checked.error.issues.map((issue) => refusalOfIssue(issue, sort)) };
}
