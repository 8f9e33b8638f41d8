import type { Database } from "#db/sqlite.ts";
import { BYTE_ORDER_MARK, csvLine } from "#server/export/csv/csv-table.ts";
import { type KeptSheet, loadSheet } from "#server/sheet/load-sheet.ts";
import { standSheet } from "#server/sheet/stand-sheet.ts";
import { asideHeadings } from "#shared/sheet/aside-sheet.ts";
import type { RowRefusal } from "#shared/sheet/row-texts.ts";
import { labelOf, type SheetField } from "#shared/sheet/sheet-fields.ts";
import type { Standing } from "#shared/sheet/stand.ts";
import { modes, retentions, roles } from "#shared/tube/vocabulary.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

type Aside = Extract<Standing, { stands: "set aside" }>;

export type SetAsideRow = {
  readonly row: number;
  readonly cells: readonly string[];
  /** What to mend: the heading of the column, null where it concerns the row, and the sentence. */
  readonly reasons: readonly { readonly heading: string | null; readonly sentence: string }[];
};

function headingOf(
  { sheet, answers }: Pick<KeptSheet, "sheet" | "answers">,
  field: SheetField | null,
): string | null {
  const place = field === null ? -1 : answers.columns.indexOf(field);
  return place < 0 ? null : (sheet.headings[place] ?? null);
}

/** Fields that take only some words. */
const someWords: Partial<Record<SheetField, readonly string[]>> = {
  role: roles,
  mode: modes,
  retention: retentions,
};

/** Where to type what is missing, and the words that are understood there; null where the sentence says enough. */
function whereTo(field: SheetField | null, heading: string | null): string | null {
  if (field === null) return null;
  const words = someWords[field]?.join(", ");
  if (heading === null)
    return `Add a column "${labelOf(field)}"${words === undefined ? "" : ` with one of: ${words}`}.`;
  return words === undefined ? null : `Type one of: ${words}.`;
}

function reasonOf(kept: KeptSheet, { field, refusal }: RowRefusal) {
  const heading = headingOf(kept, field);
  const sentence = [refusalSentence(refusal), whereTo(field, heading)].filter(Boolean).join(" ");
  return { heading, sentence };
}

/** The rows that are set aside, as they were typed, each with everything that is to be mended. */
export function setAsideRows(kept: KeptSheet, aside: readonly Aside[]): readonly SetAsideRow[] {
  const cellsOf = new Map(kept.sheet.rows.map(({ row, cells }) => [row, cells]));
  return aside.map(({ row, refusals }) => ({
    row,
    cells: cellsOf.get(row) ?? [],
    reasons: refusals.map((refusal) => reasonOf(kept, refusal)),
  }));
}

const told = ({ heading, sentence }: SetAsideRow["reasons"][number]): string =>
  heading === null ? sentence : `${heading}: ${sentence}`;

/**
 * The rows set aside as CSV (RFC 4180, UTF-8 with its mark): the list's own columns, the row and what to mend. Mended in the
 * spreadsheet it can be brought in as it is. What a spreadsheet would take for a formula is guarded, and reading takes the guard off.
 */
export function setAsideFile({
  headings,
  rows,
}: {
  headings: readonly string[];
  rows: readonly SetAsideRow[];
}): string {
  const fields = [...headings, ...asideHeadings];
  const lines = rows.map(({ row, cells, reasons }) => [...cells, String(row), reasons.map(told).join(" ")]);
  return BYTE_ORDER_MARK + [fields, ...lines].map(csvLine).join("");
}

/** The same for a list that waits, as it would stand now. */
export async function setAsideOf(db: Database, sheetId: string): Promise<string> {
  const kept = loadSheet(db, sheetId);
  const aside = (await standSheet(db, kept)).filter(
    (standing): standing is Aside => standing.stands === "set aside",
  );
  return setAsideFile({ headings: kept.sheet.headings, rows: setAsideRows(kept, aside) });
}
