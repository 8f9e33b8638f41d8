import { inAct } from "#server/act.ts";
import type { Doing } from "#server/record/record-event.ts";
import type { OnShelf } from "#server/shelf/add-to-shelf.ts";
import { shelfOf } from "#server/shelf/shelf-of.ts";
import { changeType, onShelf, seenType } from "#server/shelf/write-type.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { ChangingShelf } from "#shared/record/act.ts";
import { shelfForm } from "#shared/record/shelf/shelf-form.ts";

/**
 * Changes what is said of a type. What was planned or recorded with it keeps the facts as they stood then. Throws what the form
 * refuses, `shelf-type-unknown`, `changed-meanwhile`.
 */
export function changeOnShelf({ db, staff }: Doing, input: ChangingShelf): OnShelf {
  const { actId, typeId, texts } = input;
  return inAct({ db, staff, actId, command: "shelf: change", input }, (tx, at) => {
    const row = seenType(tx, input);
    const read = shelfForm.read(texts, { shelf: shelfOf(tx), changes: typeId });
    if (!read.ok) throw new DomainError(read.refusals);
    const after = { ...onShelf(read.entry), inUse: row.inUse };
    changeType(tx, row, { after, by: { actId, at } });
    return { actId, typeId };
  });
}
