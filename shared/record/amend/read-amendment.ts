import { amendForm } from "#shared/record/amend/amend-form.ts";
import { eventForms, type FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { FormContext, FormResult } from "#shared/record/form.ts";
import type { Payload } from "#shared/tube/payloads.ts";

/**
 * An entry read again by its own form, with the reason. The context is that of the entry: where it opened a record, `opens` holds
 * the id and number that this record has.
 */
export function readAmendment(
  kind: FormKind,
  texts: Texts,
  context: FormContext,
): FormResult<Payload<"amended">> {
  const because = amendForm.read(texts);
  const amended = eventForms[kind].read(texts, context);
  if (!because.ok || !amended.ok) {
    const refusals = [because, amended].flatMap((read) => (read.ok ? [] : read.refusals));
    return { ok: false, refusals };
  }
  const { when, time, payload } = amended.entry;
  if (amended.entry.kind !== kind) {
    const args = { from: kind, to: amended.entry.kind };
    return { ok: false, refusals: [{ code: "amendment-changes-kind", field: "from", args }] };
  }
  return { ok: true, entry: { ...because.entry, when, time, payload } };
}
