import {
  addShelfChange,
  addShelfType,
  countOnShelf,
  type ShelfRow,
  shelfTypeById,
  shelfTypeNamed,
  updateShelfType,
} from "#db/queries/shelf.ts";
import type { KeptType } from "#db/schema/shelf.ts";
import type { Tx } from "#db/transaction.ts";
import { newId } from "#server/ids.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { nameKey } from "#shared/shelf/name-key.ts";
import { MOST_TYPES, type NewShelfType } from "#shared/shelf/shelf-type.ts";

/** Whose act it is, and when. */
export type Writing = { readonly actId: string; readonly at: Instant };

export const keptOf = ({ sort, name, facts, inUse }: ShelfRow): KeptType => ({ sort, name, facts, inUse });

export const onShelf = ({ sort, name, ...facts }: NewShelfType): KeptType => ({
  sort,
  name,
  facts,
  inUse: true,
});

/** Throws `shelf-type-unknown`, and `changed-meanwhile` where somebody changed it since it was last seen. */
export function seenType(
  tx: Tx,
  { typeId, lastUpdatedAt }: { typeId: string; lastUpdatedAt: number },
): ShelfRow {
  const row = shelfTypeById(tx, typeId);
  if (row === undefined) throw new DomainError({ code: "shelf-type-unknown" });
  if (row.updatedAt !== lastUpdatedAt)
    throw new DomainError({ code: "changed-meanwhile", args: { entries: row.name } });
  return row;
}

function refuseTakenName(tx: Tx, { name, inUse }: KeptType, typeId: string | null): void {
  const there = inUse ? shelfTypeNamed(tx, nameKey(name)) : undefined;
  if (there !== undefined && there.id !== typeId)
    throw new DomainError({ code: "shelf-name-taken", field: "name", args: { text: name } });
}

const columnsOf = (kept: KeptType, { at }: Writing) => ({
  ...kept,
  nameKey: nameKey(kept.name),
  updatedAt: at,
});

/** A new type. Throws `shelf-name-taken`, `shelf-full`. */
export function addType(tx: Tx, after: KeptType, by: Writing): string {
  refuseTakenName(tx, after, null);
  if (countOnShelf(tx) >= MOST_TYPES)
    throw new DomainError({ code: "shelf-full", args: { limit: MOST_TYPES } });
  const typeId = newId();
  addShelfType(tx, { id: typeId, ...columnsOf(after, by) });
  addShelfChange(tx, { id: newId(), typeId, actId: by.actId, before: null, after, at: by.at });
  return typeId;
}

/** A type as it stands from now on; what stood is kept. Throws `shelf-name-taken`. */
export function changeType(tx: Tx, row: ShelfRow, { after, by }: { after: KeptType; by: Writing }): void {
  refuseTakenName(tx, after, row.id);
  updateShelfType(tx, { id: row.id, ...columnsOf(after, by) });
  const before = keptOf(row);
  addShelfChange(tx, { id: newId(), typeId: row.id, actId: by.actId, before, after, at: by.at });
}
