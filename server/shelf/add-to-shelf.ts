import { inAct } from "#server/act.ts";
import type { Doing } from "#server/record/record-event.ts";
import { shelfOf } from "#server/shelf/shelf-of.ts";
import { addType, onShelf } from "#server/shelf/write-type.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Registering } from "#shared/record/act.ts";
import { shelfForm } from "#shared/record/shelf/shelf-form.ts";

export type OnShelf = { readonly actId: string; readonly typeId: string };

/** Adds a type to the clinic's shelf as its form says. Throws what the form refuses, and `shelf-full`. */
export function addToShelf({ db, staff }: Doing, input: Registering): OnShelf {
  const { actId, texts } = input;
  return inAct({ db, staff, actId, command: "shelf: add", input }, (tx, at) => {
    const read = shelfForm.read(texts, { shelf: shelfOf(tx), changes: null });
    if (!read.ok) throw new DomainError(read.refusals);
    return { actId, typeId: addType(tx, onShelf(read.entry), { actId, at }) };
  });
}
