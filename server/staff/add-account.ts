import { addStaffRow, staffByUserName } from "#db/queries/staff.ts";
import type { Tx } from "#db/transaction.ts";
import { newId } from "#server/ids.ts";
import type { Person } from "#shared/access/person.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Account } from "#shared/record/account.ts";

/** `passwordHash`: of hashPassword, made before the transaction began. */
export type NewAccount = Account & { readonly passwordHash: string };

/** Throws `user-name-taken`, `approver-not-physician`. */
export function addAccount(tx: Tx, { passwordHash, ...account }: NewAccount, at: Instant): Person {
  if (account.isApprover && account.role !== "physician") {
    throw new DomainError({ code: "approver-not-physician", field: "isApprover" });
  }
  if (staffByUserName(tx, account.userName) !== undefined) {
    throw new DomainError({ code: "user-name-taken", field: "userName", args: { text: account.userName } });
  }
  const person = { id: newId(), ...account };
  addStaffRow(tx, { ...person, passwordHash, createdAt: at, closedAt: null });
  return person;
}
