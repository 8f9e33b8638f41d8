import { clinicOf } from "#db/queries/clinic.ts";
import { inAct } from "#server/act.ts";
import { besideForm } from "#server/record/beside-form.ts";
import type { Doing } from "#server/record/record-event.ts";
import { closeAccount } from "#server/staff/close-account.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { ClosingAccount } from "#shared/record/act.ts";
import { closingForm } from "#shared/record/staff/closing-form.ts";

/** Closes an account as its form says. Throws what `closeAccount` throws. */
export function closeAccountByForm({ db, staff }: Doing, input: ClosingAccount): { passed: number } {
  const { actId, closes, texts } = input;
  return inAct({ db, staff, actId, command: "staff: close", input }, (tx, at) => {
    const read = closingForm.read(texts, { closes, staff: besideForm(tx).staff });
    if (!read.ok) throw new DomainError(read.refusals);
    const by = { staffId: staff.id, actId, at, zone: clinicOf(tx).zone };
    return closeAccount(tx, by, { staffId: closes, passTo: read.entry.passTo });
  });
}
