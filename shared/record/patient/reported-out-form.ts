import type { Refusal } from "#shared/errors/refusal.ts";
import { flagField } from "#shared/record/field/choice-field.ts";
import { filledField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type EntryOf, type FormContext, form, type NumberedTube } from "#shared/record/form.ts";
import { mayBeTakenFor } from "#shared/tube/may-be-taken-for.ts";
import { numberedTitle } from "#shared/tube/name.ts";

const nameOf = ({ number }: NumberedTube): string => `tube${number}`;

/** Each tube that is in; whatever shares its side with another may be meant until somebody says not. */
const candidateFields = (tubes: readonly NumberedTube[]): Record<string, FieldSpec<boolean>> =>
  Object.fromEntries(
    tubes
      .filter(({ status }) => status === "in")
      .map((tube) => [
        nameOf(tube),
        flagField({
          label: `It may be: ${numberedTitle(tube)}`,
          initial: mayBeTakenFor(tube, tubes).length > 0 ? "yes" : "no",
        }),
      ]),
  );

function candidatesIn(values: object, tubes: readonly NumberedTube[]): readonly NumberedTube[] {
  const typed = values as Readonly<Record<string, unknown>>;
  return tubes.filter((tube) => typed[nameOf(tube)] === true);
}

/** Record that one of several tubes was told out, when nobody could say which. Each stays in by the record, with its dates. */
export const reportedOutForm = form({
  fields: (context: FormContext) => ({
    toldBy: filledField({ label: "Told by", hint: "urology, by telephone" }, "who told it"),
    ...candidateFields(context.tubes),
    when: whenField({ label: "Taken out on", hint: "? if it was not said" }, context),
    note: noteField({ label: "What was said" }),
  }),
  check: (values, { tubes }): readonly Refusal[] =>
    candidatesIn(values, tubes).length < 2 ? [{ code: "candidates-too-few" }] : [],
  entry: (values, { tubes }): EntryOf<"reported out"> => {
    const { toldBy, when, note } = values;
    const candidates = candidatesIn(values, tubes).map(({ id, number }) => ({ tube: id, number }));
    return { kind: "reported out", ...when, payload: { candidates, toldBy, note } };
  },
});
