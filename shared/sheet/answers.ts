import * as z from "zod";
import type { Refusal } from "#shared/errors/refusal.ts";
import { NAME_LIMIT } from "#shared/record/patient/limits.ts";
import { heading } from "#shared/sheet/heading.ts";
import { MOST_COLUMNS } from "#shared/sheet/sheet.ts";
import {
  fieldCalled,
  isRepeatable,
  labelOf,
  type SheetField,
  sheetFields,
} from "#shared/sheet/sheet-fields.ts";

export const dateOrders = ["day first", "month first"] as const;
export type DateOrder = (typeof dateOrders)[number];

export const nameOrders = ["family name first", "given name first"] as const;
export type NameOrder = (typeof nameOrders)[number];

/** A column that is not brought in. */
export const LEFT_OUT = "left out";

/** What was answered about a sheet, once for all its rows. Null: not answered yet. */
export const answersSchema = z.strictObject({
  /** What each column says, in the order of the headings. */
  columns: z.array(z.enum([LEFT_OUT, ...sheetFields])).max(MOST_COLUMNS),
  dateOrder: z.enum(dateOrders).nullable(),
  nameOrder: z.enum(nameOrders).nullable(),
  /** Who issued the record numbers, where no column says so. */
  issuer: z.string().trim().min(1).max(NAME_LIMIT),
});
export type Answers = z.infer<typeof answersSchema>;

/** Headings as compared, with the field that each was matched to last time. */
export type Remembered = ReadonlyMap<string, SheetField | typeof LEFT_OUT>;

/** What each column seems to say: as it was matched last time, else by its heading. A field is suggested once. */
export function suggestColumns(
  { headings }: { readonly headings: readonly string[] },
  remembered: Remembered,
): Answers["columns"] {
  const given = new Set<string>();
  return headings.map((text) => {
    const field = remembered.get(heading(text)) ?? fieldCalled(text) ?? LEFT_OUT;
    if (field === LEFT_OUT || (given.has(field) && !isRepeatable(field))) return LEFT_OUT;
    given.add(field);
    return field;
  });
}

const missing = (what: string): Refusal => ({ code: "column-missing", args: { what } });

/** What has to be mended in the matching of the columns before any row can be read. */
export function columnRefusals({ columns }: Pick<Answers, "columns">): readonly Refusal[] {
  const has = (field: SheetField): boolean => columns.includes(field);
  const twice = sheetFields.filter(
    (field) => !isRepeatable(field) && columns.filter((column) => column === field).length > 1,
  );
  const refusals: Refusal[] = twice.map((field) => ({
    code: "column-twice",
    args: { field: labelOf(field) },
  }));
  if (!has("number")) refusals.push(missing("the record number"));
  if (!has("wholeName") && !(has("familyName") && has("givenName"))) refusals.push(missing("the name"));
  if (has("wholeName") && (has("familyName") || has("givenName")))
    refusals.push({ code: "column-twice", args: { field: "the name, whole and in parts" } });
  if (!has("kind")) refusals.push(missing("the kind of tube"));
  return refusals;
}
