import { replaceOwnOrder } from "#db/queries/own-lists.ts";
import { placedSteps } from "#db/queries/work-lists.ts";
import { inTransaction } from "#db/transaction.ts";
import { today } from "#server/clock.ts";
import type { Doing } from "#server/record/record-event.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { everything } from "#shared/record/list-filter.ts";
import { type OwnPlace, placed, type WorkList } from "#shared/step/work-list.ts";

export type PuttingLine = {
  readonly list: WorkList;
  readonly stepId: string;
  readonly place: OwnPlace;
};

/** Lines that one person can put in an order: more than anybody goes through in a day. */
const MOST_PLACED = 200;

/**
 * Puts a line of a list somewhere in that person's own order; what has left the list leaves the order with it. Putting it there again
 * changes nothing. Throws `own-order-full`.
 */
export function putLine({ db, staff }: Doing, { list, stepId, place }: PuttingLine): { placed: number } {
  return inTransaction(db, (tx) => {
    const of = { list, staffId: staff.id, today: today(tx), filter: everything };
    const stood = placedSteps(tx, of).map(({ id }) => id);
    const order = placed(stood, stepId, place);
    if (order.length > MOST_PLACED)
      throw new DomainError({ code: "own-order-full", args: { most: MOST_PLACED } });
    replaceOwnOrder(tx, of, order);
    return { placed: order.length };
  });
}

/** Back to the list's own order. */
export function dropOwnOrder({ db, staff }: Doing, { list }: Pick<PuttingLine, "list">): { placed: number } {
  inTransaction(db, (tx) => replaceOwnOrder(tx, { list, staffId: staff.id }, []));
  return { placed: 0 };
}
