import { dropSessionsOf } from "#db/queries/sessions.ts";
import { allStaff, closeStaffRow } from "#db/queries/staff.ts";
import { stepsOwnedBy } from "#db/queries/step-lists.ts";
import type { Tx } from "#db/transaction.ts";
import { newId } from "#server/ids.ts";
import { append } from "#server/record/append.ts";
import type { StaffRole } from "#shared/access/roles.ts";
import { dayAt, type Instant, type Zone } from "#shared/day/instant.ts";
import { onDay } from "#shared/day/when.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

export type Closing = {
  readonly staffId: string;
  /** Who takes the open steps: a role, or a person with an open account. Null only when there are none. */
  readonly passTo: { readonly role: StaffRole } | { readonly staffId: string } | null;
};

export type DoneBy = {
  readonly staffId: string;
  readonly actId: string;
  readonly at: Instant;
  readonly zone: Zone;
};

/**
 * Closes an account after every step that was this person's by name has passed to a role or another person: one act, so that no
 * step is ever with somebody who cannot sign in. Returns how many steps passed on.
 */
export function closeAccount(tx: Tx, by: DoneBy, closing: Closing): { passed: number } {
  const open = allStaff(tx).filter(({ closedAt }) => closedAt === null);
  const leaving = open.find(({ id }) => id === closing.staffId);
  if (leaving === undefined) throw new DomainError({ code: "person-unknown" });
  const leads = open.filter(({ role }) => role === "lead");
  if (leaving.role === "lead" && leads.length === 1) throw new DomainError({ code: "last-lead" });
  const steps = stepsOwnedBy(tx, closing.staffId);
  const { passTo } = closing;
  if (steps.length > 0 && passTo === null) {
    throw new DomainError({ code: "steps-still-owned", args: { count: steps.length } });
  }
  const owner =
    passTo === null || "role" in passTo ? passTo : ownerNamed(open, passTo.staffId, closing.staffId);
  const when = onDay(dayAt(by.at, by.zone));
  for (const { patientId, tubeId, kind } of steps) {
    if (tubeId === null || owner === null) continue;
    append(tx, { patientId, actId: by.actId, staffId: by.staffId, at: by.at }, [
      {
        eventId: newId(),
        kind: "step assigned",
        tubes: [tubeId],
        when,
        time: null,
        daySequence: 0,
        payload: { step: kind as StepKind, owner },
        amends: null,
        lastSeen: Number.MAX_SAFE_INTEGER,
      },
    ]);
  }
  closeStaffRow(tx, closing.staffId, by.at);
  dropSessionsOf(tx, closing.staffId);
  return { passed: steps.length };
}

type Account = { readonly id: string; readonly role: StaffRole };

function ownerNamed(
  open: readonly Account[],
  staffId: string,
  leaving: string,
): { role: StaffRole; staffId: string } {
  const taker = open.find(({ id }) => id === staffId && id !== leaving);
  if (taker === undefined) throw new DomainError({ code: "person-unknown", field: "passTo" });
  return { role: taker.role, staffId };
}
