import type { Refusal } from "#shared/errors/refusal.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { EntryOf, FormContext } from "#shared/record/form.ts";
import type { PatientDetails } from "#shared/record/patient/patient-details.ts";
import { patientForm } from "#shared/record/patient/patient-form.ts";
import { openingForm } from "#shared/record/tube/opening-form.ts";
import type { RowRefusal, RowTexts } from "#shared/sheet/row-texts.ts";
import { type SheetField, sheetFields } from "#shared/sheet/sheet-fields.ts";

/** A row as the two forms understand it. */
export type ReadRow = {
  readonly details: PatientDetails;
  readonly tube: EntryOf<"taken over">;
};

export type RowResult =
  | { readonly ok: true; readonly row: ReadRow }
  | { readonly ok: false; readonly refusals: readonly RowRefusal[] };

type Asked = {
  readonly context: FormContext;
  /** What the columns of the sheet say, to name the one where something is to be mended. */
  readonly columns: readonly string[];
  /** What reading the cells refused: a field is told of once. */
  readonly refused: readonly RowRefusal[];
};

/** What the words of the kind may say of a tube beside it. */
const inKind = ["side", "size", "retention"] as const;

/** The column in which a field of the forms was typed. */
function columnOf(
  field: string | undefined,
  columns: readonly string[],
  { tube }: RowTexts,
): SheetField | null {
  if (field === "familyName" || field === "givenName")
    return columns.includes("wholeName") ? "wholeName" : field;
  if (field === "tractSince") return "placedOn";
  // Where nothing was exchanged, the placement is what began the catheter's clock.
  if (field === "when") return tube.when === tube.tractSince ? "placedOn" : "exchangedOn";
  if (field === "plan") return planColumn(columns, tube);
  // "PCN L 8Fr pigtail" under the kind says what other lists have columns for.
  if (inKind.some((name) => name === field) && !columns.includes(field ?? "")) return "kind";
  return sheetFields.find((name) => name === field) ?? null;
}

/** A day under "Exchange by" was typed as a plan to exchange by it. */
function planColumn(columns: readonly string[], tube: Texts): SheetField {
  const dated = (["exchangeBy", "removeBy", "reviewBy"] as const).filter((name) => columns.includes(name));
  return dated.find((name) => tube.plan?.startsWith(`${name.replace("By", "")} by `)) ?? "plan";
}

function told(
  refusals: readonly Refusal[],
  texts: RowTexts,
  { columns, refused }: Asked,
): readonly RowRefusal[] {
  const found: RowRefusal[] = [];
  for (const { field, ...refusal } of refusals) {
    const column = columnOf(field, columns, texts);
    const isTold = [...refused, ...found].some((earlier) => column !== null && earlier.field === column);
    if (!isTold) found.push({ field: column, refusal });
  }
  return found;
}

function readTube(texts: Texts, context: FormContext) {
  const read = openingForm.read(texts, context);
  if (!read.ok) return read;
  // Every row names where its tube came from, which is what makes it taken over.
  if (read.entry.kind !== "taken over") throw new Error("a row of a list opened a tube as placed here");
  return { ok: true as const, entry: read.entry };
}

/** Reads a row's texts by the very forms in which a person would type them. */
export function readRow(texts: RowTexts, asked: Asked): RowResult {
  const person = patientForm.read(texts.patient, asked.context);
  const opening = readTube(texts.tube, asked.context);
  const refusals = [
    ...asked.refused,
    ...(person.ok ? [] : told(person.refusals, texts, asked)),
    ...(opening.ok ? [] : told(opening.refusals, texts, asked)),
  ];
  if (refusals.length > 0 || !person.ok || !opening.ok) return { ok: false, refusals };
  return { ok: true, row: { details: person.entry, tube: opening.entry } };
}

/**
 * Everything that was understood of a row, as one text: two rows that say the same have the same, however they are written. The end of
 * a month in progress is left out, since it moves with today.
 */
export function markOf({ details, tube }: ReadRow): string {
  const { number: _number, ...opening } = tube.payload;
  // Rows were marked so before an answer that nobody gave was told from "no": they are known again.
  const marked = { ...details, needsInterpreter: details.needsInterpreter ?? false };
  const since = ({ precision, earliest }: (typeof tube)["when"]) => [precision, earliest];
  return JSON.stringify([
    marked,
    { ...opening, tractSince: since(opening.tractSince) },
    since(tube.when),
    tube.time,
  ]);
}
