import type { Protocol } from "#shared/protocol/protocol.ts";
import type { LeafSpec } from "#shared/protocol/rows/leaf.ts";
import { leavesOf, type RowData } from "#shared/protocol/rows/leaves.ts";
import { addressAt, placeAt, standingRows } from "#shared/protocol/rows/place-row.ts";
import { type RowSort, rowSorts } from "#shared/protocol/rows/row-sorts.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { leafLabel } from "#shared/words/protocol/leaf-words.ts";
import { rowCalled } from "#shared/words/protocol/row-names.ts";

/** A row as a form shows it: plain data, without the schema that it comes from. */
export type RowSpec = {
  readonly address: string;
  /** Its sort: the path of its address. */
  readonly path: string;
  readonly called: string;
  /** False where nothing stands there: "no row", or the blank row that a list ends in. */
  readonly stands: boolean;
  readonly isList: boolean;
  /** Whether it can be emptied to "no row", or dropped from its list. */
  readonly mayBeNone: boolean;
  readonly leaves: readonly LeafSpec[];
};

type Shown = { readonly sort: RowSort; readonly address: string; readonly row: RowData | null };

const specOf = ({ sort, address, row }: Shown, spare: number): RowSpec => ({
  address,
  path: sort.path,
  called: rowCalled(sort.path, sort.isList, row),
  stands: row !== null,
  isList: sort.isList,
  mayBeNone: sort.mayBeNone,
  leaves: leavesOf(sort.fields, row, spare).map((leaf) => ({
    ...leaf,
    label: leafLabel(sort.path, leaf.path) ?? leaf.path,
  })),
});

/** Every row of a sort; of one that stands alone also where there is none. */
function rowsOfSort(protocol: Protocol, sort: RowSort): readonly Shown[] {
  const rows = standingRows(protocol, sort);
  if (!sort.isList) return [{ sort, address: sort.path, row: rows[0] ?? null }];
  return rows.map((row, place) => ({ sort, address: addressAt(sort, row, place), row }));
}

/**
 * Every row of a version in the order of its schema, each with its address and all of its leaves. A row that the table could have and has
 * not ("no row") is among them, with blank leaves; a list shows what it holds.
 */
export const rowsOf = (protocol: Protocol): readonly RowSpec[] =>
  rowSorts.flatMap((sort) => rowsOfSort(protocol, sort)).map((shown) => specOf(shown, 0));

/**
 * One row for a form, with a blank place at the end of each list in it. The path of a list alone is a blank row of it. Null where the
 * table has no such row.
 */
export function rowAt(protocol: Protocol, address: string): RowSpec | null {
  const found = placeAt(protocol, address);
  return found === null ? null : specOf({ sort: found.sort, address, row: found.row }, 1);
}

/** A row as it would be typed, by the path of each leaf; nothing where the table has no such row. */
export const typedRow = (protocol: Protocol, address: string): Texts =>
  Object.fromEntries((rowAt(protocol, address)?.leaves ?? []).map(({ path, text }) => [path, text]));

/** The lists to which a row can be added: the path of each is the address of its blank row. */
export const listsOfRows: readonly string[] = rowSorts.flatMap(({ path, isList }) => (isList ? [path] : []));
