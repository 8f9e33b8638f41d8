import { inAct } from "#server/act.ts";
import type { Doing } from "#server/record/record-event.ts";
import type { OnShelf } from "#server/shelf/add-to-shelf.ts";
import { changeType, keptOf, seenType } from "#server/shelf/write-type.ts";
import type { Shelving } from "#shared/record/act.ts";

const shelve =
  (inUse: boolean, command: string) =>
  ({ db, staff }: Doing, input: Shelving): OnShelf => {
    const { actId, typeId } = input;
    return inAct({ db, staff, actId, command, input }, (tx, at) => {
      const row = seenType(tx, input);
      changeType(tx, row, { after: { ...keptOf(row), inUse }, by: { actId, at } });
      return { actId, typeId };
    });
  };

/** Takes a type off the shelf: it is offered no more, and its name is free. Throws `shelf-type-unknown`, `changed-meanwhile`. */
export const takeOffShelf = shelve(false, "shelf: take off");

/** Puts a type back as it was. Throws the same, and `shelf-name-taken`. */
export const putBackOnShelf = shelve(true, "shelf: put back");
