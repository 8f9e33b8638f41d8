import type { Protocol } from "#shared/protocol/protocol.ts";
import { addressOf, addressParts, keyOf } from "#shared/protocol/rows/address.ts";
import type { RowData } from "#shared/protocol/rows/leaves.ts";
import { type RowSort, rowSort, rowSorts } from "#shared/protocol/rows/row-sorts.ts";

const isData = (value: unknown): value is RowData => typeof value === "object" && value !== null;

/** What stands at a path: one row, a list of them, or nothing. */
function at(protocol: Protocol, path: string): unknown {
  return path.split(".").reduce<unknown>((inside, name) => (isData(inside) ? inside[name] : null), protocol);
}

/** Every row of this sort that stands, in its order. */
export function standingRows(protocol: Protocol, { path, isList }: RowSort): readonly RowData[] {
  const stands = at(protocol, path);
  if (isList) return Array.isArray(stands) ? stands.filter(isData) : [];
  return isData(stands) ? [stands] : [];
}

/** The address of a row that stands at a place of its sort, counted from 0. */
export const addressAt = ({ path, isList }: RowSort, row: RowData, place: number): string =>
  addressOf(path, isList ? (keyOf(row) ?? place + 1) : null);

/** Where an address leads. `place` is one past the last row for the blank row that a list ends in. */
export type Place = {
  readonly sort: RowSort;
  readonly place: number;
  /** Null where no row stands. */
  readonly row: RowData | null;
};

/** The place at an address; null where the table has none such. */
export function placeAt(protocol: Protocol, address: string): Place | null {
  const { path, key } = addressParts(address);
  const sort = rowSort(path);
  if (sort === undefined) return null;
  const rows = standingRows(protocol, sort);
  if (key === null)
    return { sort, place: sort.isList ? rows.length : 0, row: sort.isList ? null : (rows[0] ?? null) };
  const place = rows.findIndex((row, index) => addressAt(sort, row, index) === address);
  const row = rows[place];
  return row === undefined ? null : { sort, place, row };
}

const isNothing = (stands: unknown): boolean =>
  stands === null || (Array.isArray(stands) && stands.length === 0);

/** The rows of a group that has none: every list empty, every other "no row". */
const emptyGroup = (name: string): RowData =>
  Object.fromEntries(
    rowSorts
      .filter(({ path }) => path.startsWith(`${name}.`))
      .map(({ path, isList }) => [path.slice(name.length + 1), isList ? [] : null]),
  );

function stand(protocol: Protocol, path: string, stands: unknown): Protocol {
  const [name = "", inside] = path.split(".");
  if (inside === undefined) return { ...protocol, [name]: stands };
  const held = at(protocol, name);
  const group = { ...(isData(held) ? held : emptyGroup(name)), [inside]: stands };
  return { ...protocol, [name]: Object.values(group).every(isNothing) ? null : group };
}

/** The rows of one sort as given, in their order: the whole of a list, or the one row or none. A group in which nothing stands is no group. */
export const withRows = (protocol: Protocol, { path, isList }: RowSort, rows: readonly RowData[]): Protocol =>
  stand(protocol, path, isList ? rows : (rows[0] ?? null));

/** One row put, or with null taken out, where the place says. */
export function withRow(protocol: Protocol, { sort, place }: Place, row: RowData | null): Protocol {
  const rows = standingRows(protocol, sort);
  const kept = row === null ? [] : [row];
  return withRows(protocol, sort, [...rows.slice(0, place), ...kept, ...rows.slice(place + 1)]);
}
