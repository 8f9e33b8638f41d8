import { clinicOf } from "#db/queries/clinic.ts";
import { staffByUserName } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { clinicInstant } from "#server/clock.ts";
import { countAttempt, refusedNow, type Trier, takeBackAttempt } from "#server/sign-in/attempts.ts";
import { openSession } from "#server/sign-in/open-session.ts";
import { passwordFits } from "#server/sign-in/password.ts";
import { clockText, type Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";

export type SignInAttempt = {
  readonly userName: string;
  readonly password: string;
  /** Where from, as `clientAddress` tells it. */
  readonly address: string;
  /** The token that the browser holds already, if any. */
  readonly replaces: string | null;
};

const tellRefused = (db: Database, until: Instant): DomainError =>
  new DomainError({
    code: "sign-in-refused",
    args: { until: clockText(clinicInstant(db, until), clinicOf(db).zone) },
  });

/**
 * Returns the token for the cookie. Throws `sign-in-refused` with the time until which it is, after too many wrong ones, and
 * `sign-in-wrong` for every other failure alike: no such name, wrong password, closed account. `at` is the machine's now.
 */
export async function signIn(db: Database, attempt: SignInAttempt, at: Instant): Promise<string> {
  const trier: Trier = { userName: attempt.userName.trim().toLowerCase(), address: attempt.address };
  inTransaction(db, (tx) => {
    const until = refusedNow(tx, trier, at);
    if (until !== null) throw tellRefused(db, until);
    countAttempt(tx, trier, at);
  });
  const found = staffByUserName(db, trier.userName);
  const account = found?.closedAt === null ? found : undefined;
  const fits = await passwordFits(account?.passwordHash ?? null, attempt.password);
  if (account === undefined || !fits) throw new DomainError({ code: "sign-in-wrong" });
  return inTransaction(db, (tx) => {
    takeBackAttempt(tx, trier);
    return openSession(tx, { staffId: account.id, replaces: attempt.replaces }, at);
  });
}
