import { createHash } from "node:crypto";
import {
  forgetSignInRefusal,
  forgetSignInRefusalsBefore,
  type SignInRefusal,
  saveSignInRefusal,
  signInRefusalsOf,
} from "#db/queries/sign-in-refusals.ts";
import type { Tx } from "#db/transaction.ts";
import { FORGET_AFTER_MS, type Patience, patience, waitMs } from "#server/sign-in/limits.ts";
import { type Instant, instant } from "#shared/day/instant.ts";

const MINUTE_MS = 60_000;

/** Who tries: the name as typed, in lower case, and where from. */
export type Trier = { readonly userName: string; readonly address: string };

type Counted = { readonly key: string; readonly patience: Patience };

/** The name is hashed: people type passwords into the wrong field. */
const accountOf = ({ userName }: Trier): Counted => ({
  key: `account:${createHash("sha256").update(userName).digest("hex")}`,
  patience: patience.account,
});
const addressOf = ({ address }: Trier): Counted => ({
  key: `address:${address.slice(0, 64)}`,
  patience: patience.address,
});

const rowOf = (tx: Tx, { key }: Counted): SignInRefusal | undefined => signInRefusalsOf(tx, [key])[0];

/** A whole minute, as it is told by the clock. */
const refusedUntil = (failures: number, counted: Counted, at: Instant): Instant | null => {
  const wait = waitMs(failures, counted.patience);
  return wait === 0 ? null : instant(Math.ceil((at + wait) / MINUTE_MS) * MINUTE_MS);
};

/** Until when this account or this address is refused; null when neither is. */
export function refusedNow(tx: Tx, trier: Trier, at: Instant): Instant | null {
  const rows = signInRefusalsOf(tx, [accountOf(trier).key, addressOf(trier).key]);
  const ends = rows.map((row) => row.refusedUntil).filter((end) => end !== null && end > at);
  return ends.length === 0 ? null : instant(Math.max(...ends.map(Number)));
}

/** Counts an attempt as wrong before its password is checked, so that a hundred sent at once are not one. */
export function countAttempt(tx: Tx, trier: Trier, at: Instant): void {
  forgetSignInRefusalsBefore(tx, instant(at - FORGET_AFTER_MS));
  for (const counted of [accountOf(trier), addressOf(trier)]) {
    const failures = (rowOf(tx, counted)?.failures ?? 0) + 1;
    saveSignInRefusal(tx, {
      key: counted.key,
      failures,
      lastFailureAt: at,
      refusedUntil: refusedUntil(failures, counted, at),
    });
  }
}

/**
 * The attempt was right. The account's count is forgotten; the address only gets this one back, else somebody with an
 * account could wipe the count of an address between guesses at others.
 */
export function takeBackAttempt(tx: Tx, trier: Trier): void {
  forgetSignInRefusal(tx, accountOf(trier).key);
  const address = addressOf(trier);
  const row = rowOf(tx, address);
  if (row === undefined) return;
  const failures = row.failures - 1;
  if (failures === 0) forgetSignInRefusal(tx, address.key);
  else
    saveSignInRefusal(tx, {
      ...row,
      failures,
      refusedUntil: refusedUntil(failures, address, row.lastFailureAt),
    });
}
