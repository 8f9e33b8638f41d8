import type { Protocol } from "#shared/protocol/protocol.ts";
import { nameField } from "#shared/protocol/rows/address.ts";
import { type RowSpec, rowsOf } from "#shared/protocol/rows/rows-of.ts";

/** Columns of the table as a file; `called` is for readers and is not read. */
export const fileColumns = ["row", "called", "figure", "value"] as const;
export type FileColumn = (typeof fileColumns)[number];

/** The place of a row in its list, where an id or a kind tells which row it is. */
export const PLACE = "place";

/** One leaf of one row. Figures are numbers, so that a spreadsheet takes a negative one for what it is. */
export type FileLine = {
  readonly row: string;
  readonly called: string;
  readonly figure: string;
  readonly value: string | number;
};

/** Where each row of a list stands in it, by its address, where an id or a kind and no place tells which it is. */
function placesOfRows(rows: readonly RowSpec[]): ReadonlyMap<string, number> {
  const places = new Map<string, number>();
  const counted = new Map<string, number>();
  for (const { address, path, isList, leaves } of rows) {
    if (!isList || nameField(leaves.map((leaf) => leaf.path)) === undefined) continue;
    const place = (counted.get(path) ?? 0) + 1;
    counted.set(path, place);
    places.set(address, place);
  }
  return places;
}

function linesOf({ address, called, leaves }: RowSpec, place: number | undefined): readonly FileLine[] {
  const line = (figure: string, value: string | number): FileLine => ({
    row: address,
    called,
    figure,
    value,
  });
  const first = place === undefined ? [] : [line(PLACE, place)];
  const rest = leaves.map(({ path, value: { is }, text }) =>
    line(path, text !== "" && (is === "number" || is === "whole number") ? Number(text) : text),
  );
  return [...first, ...rest];
}

/** Every leaf of every row of a version, a line each: what the file of the table says. "No row" is a row of blank values. */
export function fileLines(protocol: Protocol): readonly FileLine[] {
  const rows = rowsOf(protocol);
  const places = placesOfRows(rows);
  return rows.flatMap((row) => linesOf(row, places.get(row.address)));
}
