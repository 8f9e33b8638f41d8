import { eventForms, type FormKind } from "#shared/record/event-forms.ts";
import { filledField } from "#shared/record/field/text-field.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { type FormContext, type FormResult, plainForm } from "#shared/record/form.ts";
import { NOTE_LIMIT } from "#shared/tube/entry-limits.ts";
import type { Payload } from "#shared/tube/payloads.ts";

/** Why an entry is amended: stands before the fields of the entry's own form. Its name is no field's of any other form. */
export const amendForm = plainForm({
  fields: () => ({
    amendedBecause: filledField({ label: "Why it is changed" }, "why it is changed", NOTE_LIMIT),
  }),
  entry: ({ amendedBecause }) => ({ reason: amendedBecause }),
});

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
