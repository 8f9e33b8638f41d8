import { shelfChangesOfAct, shelfTypeById } from "#db/queries/shelf.ts";
import type { Tx } from "#db/transaction.ts";
import { changeType, keptOf, type Writing } from "#server/shelf/write-type.ts";
import { mayStock } from "#shared/access/may.ts";
import type { Person } from "#shared/access/person.ts";
import { DomainError } from "#shared/errors/refusal.ts";

type UndoneBy = Writing & { readonly staff: Pick<Person, "role"> };

/**
 * Takes back what an act did on the shelf: what was changed is as before, what was new is taken off. Gives how many types that were.
 * Throws `not-allowed`, `shelf-changed-since` where somebody changed one of them after that act, `shelf-name-taken`.
 */
export function undoOnShelf(tx: Tx, undoes: string, { staff, ...by }: UndoneBy): number {
  const changes = shelfChangesOfAct(tx, undoes).toReversed();
  if (changes.length > 0 && !mayStock(staff)) throw new DomainError({ code: "not-allowed" });
  const standing = changes.map((change) => ({ change, row: shelfTypeById(tx, change.typeId) }));
  const since = standing.filter(
    ({ change, row }) => row === undefined || JSON.stringify(keptOf(row)) !== JSON.stringify(change.after),
  );
  if (since.length > 0) {
    const names = since.map(({ change }) => change.after.name).join(", ");
    throw new DomainError({ code: "shelf-changed-since", args: { names } });
  }
  for (const { change, row } of standing) {
    if (row === undefined) continue;
    changeType(tx, row, { after: change.before ?? { ...change.after, inUse: false }, by });
  }
  return changes.length;
}
