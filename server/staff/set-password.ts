import { dropSessionsOf } from "#db/queries/sessions.ts";
import { type StaffRow, setPasswordHash, staffByUserName } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** The open account of that name. Throws `user-name-unknown`. */
export function accountNamed(db: Database, userName: string): StaffRow {
  const found = staffByUserName(db, userName);
  if (found === undefined || found.closedAt !== null)
    throw new DomainError({ code: "user-name-unknown", field: "userName", args: { text: userName } });
  return found;
}

/** `passwordHash`: of hashPassword, made before the transaction began. */
export type NewPassword = { readonly userName: string; readonly passwordHash: string };

/** Gives an open account another password and ends its sessions. Throws `user-name-unknown`. */
export function setPassword(tx: Tx, { userName, passwordHash }: NewPassword): StaffRow {
  const account = accountNamed(tx, userName);
  setPasswordHash(tx, account.id, passwordHash);
  dropSessionsOf(tx, account.id);
  return account;
}
