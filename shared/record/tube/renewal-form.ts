import { flagField } from "#shared/record/field/choice-field.ts";
import { optionalLengthField } from "#shared/record/field/length-field.ts";
import { planField } from "#shared/record/field/plan-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { notBeforeTube } from "#shared/record/not-before-tube.ts";
import { factFields, factsOf, SIZE_HINT } from "#shared/record/tube/fact-fields.ts";
import { insideRefusals, sizeOrShelfField, sizeRefusals } from "#shared/record/tube/from-shelf.ts";

export type RenewalKind = "exchanged" | "upsized" | "downsized" | "salvaged" | "new puncture";

const dateLabels = {
  exchanged: "Exchanged on",
  upsized: "Upsized on",
  downsized: "Downsized on",
  salvaged: "Salvaged on",
  "new puncture": "New puncture on",
} as const satisfies Record<RenewalKind, string>;

const saysSize = (kind: RenewalKind): boolean => kind === "upsized" || kind === "downsized";

/** An upsize or a downsize says its size, though it may be unknown; the others keep the size that stood unless one is typed. */
const sizeField = (kind: RenewalKind, context: FormContext) =>
  saysSize(kind)
    ? sizeOrShelfField({ label: "New size", hint: SIZE_HINT }, context)
    : optionalLengthField({ label: "Size", hint: `blank: as before; ${SIZE_HINT}` }, "tube outside");

const renewalForm = <K extends RenewalKind>(kind: K) =>
  form({
    fields: (context: FormContext) => {
      const { takes, ...facts } = factFields(context);
      return {
        when: whenField({ label: dateLabels[kind] }, context),
        size: sizeField(kind, context),
        takes: { ...takes, detail: false },
        plan: planField({ label: "Plan from now on" }, context),
        elsewhere: lineField({ label: "Done elsewhere, at", hint: "blank: done here" }),
        difficult: flagField({ label: "It was difficult", detail: true }),
        ...facts,
        note: noteField({ label: "Note", detail: true }),
      };
    },
    check: ({ when, plan, ...typed }) => [
      ...(saysSize(kind) ? sizeRefusals(typed) : []),
      ...insideRefusals(typed),
      ...notBeforeTube("plan", plan?.by ?? null, when.when.earliest),
    ],
    entry: ({ when, plan, elsewhere, difficult, note, ...typed }) => ({
      kind,
      ...when,
      payload: {
        facts: factsOf(typed, { toldByOthers: elsewhere !== null, blank: "says nothing" }),
        plan,
        elsewhere,
        difficult,
        note,
      },
    }),
  });

export const exchangeForm = renewalForm("exchanged");
export const upsizeForm = renewalForm("upsized");
export const downsizeForm = renewalForm("downsized");
export const salvageForm = renewalForm("salvaged");
export const newPunctureForm = renewalForm("new puncture");

export type RenewalEntry = { readonly [K in RenewalKind]: EntryOf<K> }[RenewalKind];
