import { clinicOf } from "#db/queries/clinic.ts";
import { dropProtocolDraft } from "#db/queries/protocol-draft.ts";
import { allStaff, type StaffRow } from "#db/queries/staff.ts";
import { addProtocolVersion, newestVersions } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import { inAct } from "#server/act.ts";
import { proposeEverywhere } from "#server/dates/propose-everywhere.ts";
import { draftSeen, type ProtocolDraft, standingProtocol } from "#server/protocol/draft.ts";
import { calendarOf } from "#server/record/books.ts";
import type { Doing } from "#server/record/record-event.ts";
import { passwordFits } from "#server/sign-in/password.ts";
import type { Day } from "#shared/day/day.ts";
import { dayAt, type Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { sameRows } from "#shared/protocol/differs.ts";

export type Signing = {
  readonly actId: string;
  /** The draft as the signer saw it. */
  readonly revision: number;
  /** The signer's own, typed anew: a screen left open signs nothing. */
  readonly password: string;
};

export type Signed = {
  readonly version: number;
  readonly by: string;
  readonly on: Day;
  /** The signer had changed the draft too, being the only approver. */
  readonly alone: boolean;
  /** Tubes of which a new date is proposed. Nothing has moved. */
  readonly tubes: number;
};

const openApprovers = (db: Database): readonly StaffRow[] =>
  allStaff(db).filter(({ isApprover, closedAt }) => isApprover && closedAt === null);

/** Whoever changed the draft signs it only as the one approver that the clinic has. Throws `signed-by-author`. */
function isAlone(db: Database, { authors }: ProtocolDraft, signer: string): boolean {
  if (!authors.includes(signer)) return false;
  const others = openApprovers(db).filter(({ id }) => id !== signer);
  if (others.length > 0) {
    const names = others.map(({ fullName }) => fullName).join(", ");
    throw new DomainError({ code: "signed-by-author", args: { others: names } });
  }
  return true;
}

type Approval = { readonly by: string; readonly on: Day; readonly alone: boolean; readonly at: Instant };

function addSigned(tx: Tx, draft: ProtocolDraft, approval: Approval): void {
  const { version, approved: _nobody, ...rows } = draft.protocol;
  addProtocolVersion(tx, {
    version,
    rows,
    note: draft.note,
    approvedBy: approval.by,
    approvedOn: approval.on,
    approvedAlone: approval.alone,
    draftedBy: draft.authors,
    createdAt: approval.at,
  });
}

/**
 * An approver signs the draft that they saw: it becomes the next version, and what it would move is proposed. Dates that stand keep their
 * version until somebody confirms. Throws `sign-in-wrong`, `draft-missing`, `draft-changed`, `draft-without-change`, `signed-by-author`.
 */
export async function signDraft(
  { db, staff }: Doing,
  { actId, revision, password }: Signing,
): Promise<Signed> {
  const signer = openApprovers(db).find(({ id }) => id === staff.id);
  if (signer === undefined) throw new DomainError({ code: "not-allowed" });
  if (!(await passwordFits(signer.passwordHash, password)))
    throw new DomainError({ code: "password-wrong", field: "password" });
  return inAct({ db, staff, actId, command: "protocol: sign", input: { revision } }, (tx, at) => {
    const draft = draftSeen(tx, revision);
    const stands = standingProtocol(tx);
    if (stands.approved !== null && sameRows(stands, draft.protocol))
      throw new DomainError({ code: "draft-without-change" });
    const alone = isAlone(tx, draft, signer.id);
    const on = dayAt(at, clinicOf(tx).zone);
    addSigned(tx, draft, { by: signer.id, on, alone, at });
    dropProtocolDraft(tx);
    const { version } = draft.protocol;
    const calendar = calendarOf(tx, newestVersions(tx)?.calendar ?? 1);
    const protocol = { ...draft.protocol, approved: { by: signer.fullName, on } };
    return { version, by: signer.fullName, on, alone, tubes: proposeEverywhere(tx, { protocol, calendar }) };
  });
}
