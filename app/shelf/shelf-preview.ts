import type { SignedIn } from "#app/_trpc/server.ts";

type ShelfApi = SignedIn["api"]["shelf"];

/** A sheet as it would stand on the shelf, row by row. */
export type ShelfPreview = Awaited<ReturnType<ShelfApi["previewed"]>>;
export type BroughtToShelf = Awaited<ReturnType<ShelfApi["broughtIn"]>>;

type Row = ShelfPreview["rows"][number];
export type RowOf<S extends Row["stands"]> = Extract<Row, { stands: S }>;

export const rowsThat = <S extends Row["stands"]>({ rows }: ShelfPreview, stands: S): readonly RowOf<S>[] =>
  rows.filter((row): row is RowOf<S> => row.stands === stands);
