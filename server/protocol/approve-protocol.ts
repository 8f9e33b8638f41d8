import { clinicOf } from "#db/queries/clinic.ts";
import type { StaffRow } from "#db/queries/staff.ts";
import { addProtocolVersion, newestVersions } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { protocolOf } from "#server/record/books.ts";
import { passwordFits } from "#server/sign-in/password.ts";
import { accountNamed } from "#server/staff/set-password.ts";
import type { Day } from "#shared/day/day.ts";
import { dayAt } from "#shared/day/instant.ts";
import { printDay } from "#shared/day/print-day.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";

/** Who approves, as they type it themselves: their name in full, and their own password. */
export type Approving = {
  readonly userName: string;
  readonly fullName: string;
  readonly password: string;
  /** The version that they read. */
  readonly version: number;
};

export type Approved = { readonly version: number; readonly by: string; readonly on: Day };

/** The newest version, which nobody has approved yet. Throws `no-pins`, `protocol-approved-already`. */
export function protocolToApprove(db: Database): Protocol {
  const versions = newestVersions(db);
  if (versions === null) throw new DomainError({ code: "no-pins" });
  const protocol = protocolOf(db, versions.protocol);
  if (protocol.approved !== null) {
    const { version, approved } = protocol;
    const args = { version, by: approved.by, day: printDay(approved.on) };
    throw new DomainError({ code: "protocol-approved-already", args });
  }
  return protocol;
}

/** Throws `user-name-unknown`, `not-an-approver`. */
export function approverNamed(db: Database, userName: string): StaffRow {
  const account = accountNamed(db, userName);
  if (!account.isApprover)
    throw new DomainError({ code: "not-an-approver", args: { name: account.fullName } });
  return account;
}

const sameName = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** Nobody approves for another: the name that is typed and the password are the account's own. */
async function approver(db: Database, { userName, fullName, password }: Approving): Promise<StaffRow> {
  const account = approverNamed(db, userName);
  if (!sameName(fullName, account.fullName))
    throw new DomainError({ code: "name-differs", args: { text: fullName.trim() } });
  if (!(await passwordFits(account.passwordHash, password))) throw new DomainError({ code: "sign-in-wrong" });
  return account;
}

/**
 * Approves the clinic's newest rows as they stand: the next version, with who and the clinic's day. Clocks that start from then on are
 * pinned to it; what stands keeps the version that it came from.
 */
export async function approveProtocol(db: Database, approving: Approving): Promise<Approved> {
  const { id, fullName } = await approver(db, approving);
  const input = { version: approving.version };
  const act = { db, staff: { id }, actId: newId(), command: "protocol: approve", input };
  return inAct(act, (tx, at) => {
    const { version: read, approved: _nobody, ...rows } = protocolToApprove(tx);
    if (read !== approving.version)
      throw new DomainError({ code: "changed-meanwhile", args: { entries: `protocol version ${read}` } });
    const on = dayAt(at, clinicOf(tx).zone);
    const version = read + 1;
    const note = `Version ${read} as it stood, approved.`;
    const approval = { approvedBy: id, approvedOn: on, draftedBy: null, approvedAlone: null };
    addProtocolVersion(tx, { version, rows, note, ...approval, createdAt: at });
    return { version, by: fullName, on };
  });
}
