import { addClinicChange, clinicOf, setClinicSettings } from "#db/queries/clinic.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import type { Doing } from "#server/record/record-event.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { SettingTelephone } from "#shared/record/act.ts";
import { telephoneForm } from "#shared/record/clinic/telephone-form.ts";

/** The number before and after, "" where there is none. */
export type TelephoneSet = { readonly before: string; readonly phone: string };

/**
 * Sets the number that papers tell patients to ring; what stood is kept. Throws every field to mend, and `changed-meanwhile` where somebody
 * set another since the page was opened. The same number again changes nothing.
 */
export function setTelephone({ db, staff }: Doing, input: SettingTelephone): TelephoneSet {
  const { actId, texts, seen } = input;
  return inAct({ db, staff, actId, command: "clinic: telephone", input }, (tx, at) => {
    const { phone: before } = clinicOf(tx);
    const read = telephoneForm.read(texts, { phone: before });
    if (!read.ok) throw new DomainError(read.refusals);
    if (before !== seen)
      throw new DomainError({ code: "changed-meanwhile", args: { entries: before || "no number" } });
    const { phone } = read.entry;
    if (phone !== before) {
      setClinicSettings(tx, { phone });
      addClinicChange(tx, { id: newId(), actId, before: { phone: before }, after: { phone }, at });
    }
    return { before, phone };
  });
}
