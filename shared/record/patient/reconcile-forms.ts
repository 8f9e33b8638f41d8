import { choiceField, choicesOf } from "#shared/record/field/choice-field.ts";
import { sideField } from "#shared/record/field/side-field.ts";
import { filledField, lineField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import type { FieldSpec, Texts } from "#shared/record/field-spec.ts";
import { type EntryOf, type FormContext, form, type NumberedTube } from "#shared/record/form.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import { NOTE_LIMIT } from "#shared/tube/entry-limits.ts";
import { tubeTitle } from "#shared/tube/name.ts";
import { reconcileAbouts, type Side } from "#shared/tube/vocabulary.ts";

const aboutField = () =>
  choiceField({ label: "What does not agree", what: "what does not agree" }, choicesOf(reconcileAbouts));

/** Ask for two reports, or two records of one patient, to be reconciled: open until somebody has. */
export const reconcileAskForm = form({
  fields: (context: FormContext) => ({
    about: aboutField(),
    says: filledField(
      {
        label: "What they say",
        hint: "the report says right, the record left; the number of the other record",
      },
      "what they say",
      NOTE_LIMIT,
    ),
    toldBy: lineField({ label: "Told by", hint: "blank: seen here" }),
    when: whenField({ label: "Seen on" }, context),
  }),
  entry: ({ about, says, toldBy, when }): EntryOf<"reconcile asked"> => ({
    kind: "reconcile asked",
    ...when,
    payload: { about, says, ...(toldBy !== null && { toldBy }) },
  }),
});

const nameOf = ({ number }: NumberedTube): string => `side${number}`;

/** Sides are in question only where they are what does not agree. */
const asksSides = (texts: Texts): boolean => {
  const about = aboutField().read(texts.about ?? "");
  return about.ok && about.value === "sides";
};

/** The side of each tube that has one to find; blank leaves it as it stands. */
const sideFields = (tubes: readonly NumberedTube[]): Record<string, FieldSpec<Fact<Side> | undefined>> =>
  Object.fromEntries(
    tubes.map((tube) => [
      nameOf(tube),
      {
        ...sideField({
          label: `Side of tube ${tube.number}: ${tubeTitle(tube)}`,
          hint: "blank: as it stands",
        }),
        belongs: asksSides,
      },
    ]),
  );

/** Record which was right. The sides that were wrong are set in the same act, so that a swap is never half done. */
export const reconcileForm = form({
  fields: (context: FormContext) => ({
    about: aboutField(),
    how: filledField(
      { label: "Found how", hint: "films looked at with the operator" },
      "how it was found",
      NOTE_LIMIT,
    ),
    ...sideFields(context.tubes),
    when: whenField({ label: "Found on" }, context),
  }),
  entry: (values, { tubes }): EntryOf<"reconciled"> => {
    const { about, how, when } = values;
    const typed = values as Readonly<Record<string, unknown>>;
    const sides = tubes.flatMap((tube) => {
      const side = typed[nameOf(tube)] as Fact<Side> | undefined;
      return side === undefined ? [] : [{ tube: tube.id, number: tube.number, side }];
    });
    return { kind: "reconciled", ...when, payload: { about, how, sides } };
  },
});
