import { shelfTypeById } from "#db/queries/shelf.ts";
import type { Tx } from "#db/transaction.ts";
import { inAct } from "#server/act.ts";
import type { Doing } from "#server/record/record-event.ts";
import { readShelfSheet, type ShelfSheet } from "#server/shelf/read-shelf-sheet.ts";
import { addType, changeType, onShelf, type Writing } from "#server/shelf/write-type.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { ShelfStanding } from "#shared/shelf/stand-rows.ts";

export type BringingToShelf = ShelfSheet & {
  readonly actId: string;
  /** Whether a type that is on the shelf already is changed to what its row says; otherwise it stays as it is. */
  readonly changes: boolean;
};

export type BroughtToShelf = {
  readonly actId: string;
  readonly added: number;
  readonly changed: number;
  readonly setAside: number;
};

const standsAs =
  <S extends ShelfStanding["stands"]>(stands: S) =>
  (row: ShelfStanding): row is Extract<ShelfStanding, { stands: S }> =>
    row.stands === stands;

function change(tx: Tx, { type, was }: Extract<ShelfStanding, { stands: "changes" }>, by: Writing): void {
  const row = shelfTypeById(tx, was.id);
  if (row === undefined) throw new DomainError({ code: "shelf-type-unknown" });
  changeType(tx, row, { after: onShelf(type), by });
}

/**
 * Brings every row of a sheet that can be read onto the shelf, all of them in one act or none. The same sheet brought again changes
 * nothing: it is refused (`nothing-for-shelf`). Throws what `readShelfSheet` throws, and `shelf-full`.
 */
export function bringToShelf({ db, staff }: Doing, input: BringingToShelf): BroughtToShelf {
  const { actId, changes } = input;
  const { sheet } = readShelfSheet(db, input);
  const said = { actId, changes, sheet };
  return inAct({ db, staff, actId, command: "shelf: bring in a sheet", input: said }, (tx, at) => {
    const { rows } = readShelfSheet(tx, input);
    const added = rows.filter(standsAs("new"));
    const changed = changes ? rows.filter(standsAs("changes")) : [];
    if (added.length + changed.length === 0) throw new DomainError({ code: "nothing-for-shelf" });
    for (const { type } of added) addType(tx, onShelf(type), { actId, at });
    for (const row of changed) change(tx, row, { actId, at });
    const setAside = rows.filter(standsAs("set aside")).length;
    return { actId, added: added.length, changed: changed.length, setAside };
  });
}
