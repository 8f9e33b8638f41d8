import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import { type ColumnNames, calledFields } from "#shared/sheet/called-fields.ts";

/**
 * What a column of a sheet of types can say, in the order in which an export writes them: the heading that it is exported by, and
 * others that clinics give it (practice, no source).
 */
const columns = {
  sort: { label: "Sort", also: ["type", "category", "item type", "what it is"] },
  name: { label: "Name", also: ["shelf name", "item", "product", "description"] },
  outside: { label: "Size", also: ["outside", "french", "fr", "diameter", "outer diameter", "od", "gauge"] },
  tolerance: { label: "Tolerance", also: ["size tolerance", "plus minus"] },
  takes: { label: "Takes a wire of", also: ["takes wire", "wire", "guidewire", "max wire", "takes"] },
  takesDevice: {
    label: "Takes a device of",
    also: ["takes device", "device", "accepts", "sheath size", "takes catheter"],
  },
  hub: { label: "Hub inside", also: ["hub"] },
  shaft: { label: "Shaft inside", also: ["shaft", "inside", "inner diameter", "id", "lumen"] },
  endHoleInside: { label: "End hole inside", also: ["tip inside", "end hole size"] },
  valve: { label: "Valve inside", also: ["valve"] },
  stopcock: { label: "Stopcock inside", also: ["stopcock", "tap"] },
  length: { label: "Length, cm", also: ["length", "length cm", "full length"] },
  endHole: { label: "End hole", also: ["tip", "end hole open"] },
  retention: { label: "Held by", also: ["retention", "lock", "held"] },
  kinds: { label: "Kinds of tube", also: ["kinds", "kind", "for", "used for"] },
  certainty: { label: "Known from", also: ["certainty", "how known", "source"] },
} as const satisfies Record<string, ColumnNames>;

export type ShelfColumn = keyof typeof columns;

export const shelfColumns = Object.keys(columns) as ShelfColumn[];

export const columnLabel = (column: ShelfColumn): string => columns[column].label;

const { fieldCalled, isHeading } = calledFields<ShelfColumn>(columns);

export const isShelfHeading = isHeading;

/** Which column says what, in the order of the sheet; null is one that is not read. */
export type ColumnsRead = readonly (ShelfColumn | null)[];

/** What a row cannot do without: a name to be known by, and the sort that its sizes are read by. */
const needed = ["name", "sort"] as const satisfies readonly ShelfColumn[];

/** The columns of a sheet by its headings. Refusals: `shelf-column-missing`, `shelf-column-twice`. */
export function columnsOf(headings: readonly string[]): Parsed<ColumnsRead> {
  const read = headings.map((title) => fieldCalled(title) ?? null);
  const twice = read.find((column, at) => column !== null && read.indexOf(column) !== at);
  if (twice) return unread("shelf-column-twice", { label: columnLabel(twice) });
  const missing = needed.find((column) => !read.includes(column));
  return missing === undefined
    ? parsed(read)
    : unread("shelf-column-missing", { label: columnLabel(missing) });
}
