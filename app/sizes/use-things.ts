import { useReducer } from "react";
import type { CoaxialSort } from "#shared/fit/coaxial.ts";
import type { TypedThing } from "#shared/record/shelf/read-chain.ts";

/** One row: `key` stays with it wherever it is moved. */
export type Row = TypedThing & { readonly key: number };

type Things = {
  readonly rows: readonly Row[];
  readonly nextKey: number;
  /** What stood before it was replaced or a row was removed, while it can be put back. */
  readonly before: readonly Row[] | null;
};

export type Change =
  | { readonly do: "start"; readonly things: readonly TypedThing[] }
  | { readonly do: "type"; readonly key: number; readonly field: string; readonly text: string }
  | { readonly do: "choose sort"; readonly key: number; readonly sort: CoaxialSort }
  | { readonly do: "fill"; readonly key: number; readonly thing: TypedThing }
  | { readonly do: "move"; readonly key: number; readonly by: -1 | 1 }
  | { readonly do: "remove"; readonly key: number }
  | { readonly do: "add" }
  | { readonly do: "put back" };

const holdsText = ({ texts }: Row): boolean => Object.values(texts).some((text) => text.trim() !== "");

/** New keys, so that the fields open with these texts. */
function opened(things: readonly TypedThing[], { nextKey }: Things, before: Things["before"]): Things {
  const rows = things.map(({ sort, texts }, index) => ({ key: nextKey + index, sort, texts }));
  return { rows, nextKey: nextKey + rows.length, before };
}

function moved(rows: readonly Row[], key: number, by: -1 | 1): readonly Row[] {
  const from = rows.findIndex((row) => row.key === key);
  const to = from + by;
  const row = rows[from];
  if (row === undefined || to < 0 || to >= rows.length) return rows;
  return rows.toSpliced(from, 1).toSpliced(to, 0, row);
}

const changed = (rows: readonly Row[], key: number, to: (row: Row) => Row): readonly Row[] =>
  rows.map((row) => (row.key === key ? to(row) : row));

export function withChange(things: Things, change: Change): Things {
  const { rows, nextKey, before } = things;
  switch (change.do) {
    case "start":
      return opened(change.things, things, rows.some(holdsText) ? rows : before);
    case "put back":
      return before === null ? things : opened(before, things, null);
    case "type": {
      const typed = { [change.field]: change.text };
      return {
        ...things,
        rows: changed(rows, change.key, (row) => ({ ...row, texts: { ...row.texts, ...typed } })),
      };
    }
    case "fill": {
      const filled = { ...change.thing, key: nextKey };
      return { rows: changed(rows, change.key, () => filled), nextKey: nextKey + 1, before: rows };
    }
    case "choose sort":
      return { ...things, rows: changed(rows, change.key, (row) => ({ ...row, sort: change.sort })) };
    case "move":
      return { ...things, rows: moved(rows, change.key, change.by) };
    case "remove":
      return { ...things, rows: rows.filter(({ key }) => key !== change.key), before: rows };
    case "add":
      return { ...things, rows: [...rows, { key: nextKey, sort: "tube", texts: {} }], nextKey: nextKey + 1 };
  }
}

/** The rows of a chain, the innermost first, and what may be done with them. Nothing leaves the page. */
export const useThings = (first: readonly TypedThing[]) =>
  useReducer(withChange, opened(first, { rows: [], nextKey: 1, before: null }, null));
