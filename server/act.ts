import { type ActRow, actById, addAct } from "#db/queries/acts.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction, type Tx } from "#db/transaction.ts";
import { now } from "#server/clock.ts";
import { inputHash } from "#server/input-hash.ts";
import type { Person } from "#shared/access/person.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** One submit: who sends which form. `actId` is made by the form, so that sending again is the same act. */
export type Act = {
  readonly db: Database;
  readonly staff: Pick<Person, "id">;
  readonly actId: string;
  readonly command: string;
  readonly input: unknown;
};

const isSame = (before: ActRow, sent: Omit<ActRow, "id" | "result" | "recordedAt">): boolean =>
  before.staffId === sent.staffId && before.command === sent.command && before.inputHash === sent.inputHash;

/**
 * Does the work of a submit once, in one IMMEDIATE transaction, and keeps its result. The same act sent again, after a double
 * Enter or an answer lost on the way, gets the kept result and does nothing. The same id with another person, command or
 * input is refused (`act-already-used`). When `work` throws, nothing is written and the id stays free.
 *
 * `work` gets the one instant at which everything of this act is recorded. Its result must be JSON.
 */
export function inAct<T>({ db, staff, actId, command, input }: Act, work: (tx: Tx, at: Instant) => T): T {
  const sent = { staffId: staff.id, command, inputHash: inputHash(input) };
  return inTransaction(db, (tx) => {
    const before = actById(tx, actId);
    if (before !== undefined) {
      if (!isSame(before, sent)) throw new DomainError({ code: "act-already-used" });
      return JSON.parse(before.result) as T;
    }
    const recordedAt = now(tx);
    const answer = work(tx, recordedAt) ?? null;
    // JSON would make {} of a promise, and the transaction would commit before its work is done.
    if (answer instanceof Promise) throw new TypeError("the work of an act is synchronous");
    const result = JSON.stringify(answer);
    addAct(tx, { id: actId, ...sent, result, recordedAt });
    return JSON.parse(result) as T;
  });
}
