import type { Refusal } from "#shared/errors/refusal.ts";
import type { CoaxialSort } from "#shared/fit/coaxial.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { shelfForm } from "#shared/record/shelf/shelf-form.ts";
import type { SheetLine } from "#shared/sheet/sheet.ts";
import { nameKey } from "#shared/shelf/name-key.ts";
import { type ShelfRowRead, shelfRowTexts } from "#shared/shelf/row-texts.ts";
import {
  type ColumnsRead,
  columnLabel,
  type ShelfColumn,
  shelfColumns,
} from "#shared/shelf/shelf-columns.ts";
import type { NewShelfType, ShelfType } from "#shared/shelf/shelf-type.ts";
import { boreText, typeTexts } from "#shared/shelf/type-texts.ts";

/** What is wrong with a row, under the heading where it is mended; null where it concerns the row. */
export type Reason = { readonly label: string | null; readonly refusal: Refusal };

/** How one row of a sheet would stand on the shelf. */
export type ShelfStanding = { readonly row: number } & (
  | { readonly stands: "new"; readonly type: NewShelfType }
  | { readonly stands: "here already"; readonly type: ShelfType }
  | { readonly stands: "changes"; readonly type: NewShelfType; readonly was: ShelfType }
  | { readonly stands: "set aside"; readonly cells: readonly string[]; readonly reasons: readonly Reason[] }
);

export type ReadingShelf = {
  readonly headings: readonly string[];
  readonly columns: ColumnsRead;
  readonly shelf: readonly ShelfType[];
};

const NOBODY = { shelf: [], changes: null };

const isColumn = (field: string): field is ShelfColumn => shelfColumns.some((column) => column === field);

/** The field of the form as the column that it was typed from. */
const labelOf = ({ field }: Refusal): string | null =>
  field !== undefined && isColumn(field) ? columnLabel(field) : null;

/** Whether two types say the same, name and case of the name included. */
const isSame = (one: NewShelfType, other: NewShelfType): boolean => {
  const [texts, others] = [typeTexts(one), typeTexts(other)];
  return Object.keys(texts).every((name) => texts[name] === others[name]);
};

/** What the form needs of a new type where the row says nothing. */
const BLANK: Texts = { outside: "?", certainty: "confirmed" };

/** What the row says, and of what it does not speak what the shelf has: a sheet without a column takes nothing away. */
function textsBeside({ texts, insides }: ShelfRowRead, was: ShelfType | undefined): Texts {
  const spoken = Object.entries(texts).filter(([, text]) => text !== "");
  // Of another sort nothing is known by what this one was.
  const kept = was !== undefined && readsAs(was.sort, texts) ? was : undefined;
  const stood = (kept?.bores ?? []).map((bore): [string, string] => [bore.place, boreText(bore)]);
  const bores = Object.entries({ ...Object.fromEntries(stood), ...insides });
  return {
    ...(kept === undefined ? BLANK : typeTexts(kept)),
    ...Object.fromEntries(spoken),
    bores: bores.map(([place, text]) => `${place} ${text}`).join(", "),
  };
}

const sortOf = shelfForm.fields(NOBODY).sort;

function readsAs(sort: CoaxialSort, { sort: text = "" }: Texts): boolean {
  const read = sortOf.read(text);
  return read.ok && read.value === sort;
}

type Named = Omit<ReadingShelf, "shelf"> & { readonly byName: ReadonlyMap<string, ShelfType> };

function standRow(line: SheetLine, { byName, ...reading }: Named): ShelfStanding {
  const { row, cells } = line;
  const said = shelfRowTexts(line, reading);
  const was = byName.get(nameKey(said.texts.name ?? ""));
  const read = shelfForm.read(textsBeside(said, was), NOBODY);
  const reasons = [
    ...said.refusals.map(({ column, refusal }) => ({ label: column && columnLabel(column), refusal })),
    ...(read.ok ? [] : read.refusals.map((refusal) => ({ label: labelOf(refusal), refusal }))),
  ];
  if (!read.ok || reasons.length > 0) return { row, stands: "set aside", cells, reasons };
  const type = read.entry;
  if (was === undefined) return { row, stands: "new", type };
  return isSame(was, type)
    ? { row, stands: "here already", type: was }
    : { row, stands: "changes", type, was };
}

/** How every row of a sheet would stand; of two rows with one name the later is set aside. */
export function standRows(
  lines: readonly SheetLine[],
  { shelf, ...reading }: ReadingShelf,
): readonly ShelfStanding[] {
  const byName = new Map(shelf.map((type) => [nameKey(type.name), type]));
  const rows = new Map<string, number>();
  return lines.map((line) => {
    const standing = standRow(line, { ...reading, byName });
    if (standing.stands === "set aside") return standing;
    const key = nameKey(standing.type.name);
    const first = rows.get(key);
    rows.set(key, first ?? line.row);
    if (first === undefined) return standing;
    const refusal: Refusal = { code: "shelf-name-twice", args: { row: first } };
    const { row, cells } = line;
    return { row, stands: "set aside", cells, reasons: [{ label: columnLabel("name"), refusal }] };
  });
}
