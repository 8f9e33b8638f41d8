import { yesNoField } from "#shared/record/field/choice-field.ts";
import { lineField, textFactField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { saidOf } from "#shared/record/said-of.ts";

/** Note what of the patient bears on the tubes: only what is typed is said. */
export const conditionsForm = form({
  fields: (context: FormContext) => ({
    allergies: textFactField({ label: "Allergies", hint: "none known, contrast, latex; ? if unknown" }),
    bloodThinners: textFactField({ label: "Blood thinners", hint: "none, or which; ? if unknown" }),
    bloodThinnerReason: textFactField({ label: "Taken for" }),
    isolation: textFactField({ label: "Isolation" }),
    pregnancy: yesNoField({ label: "Pregnancy" }),
    stoneFormer: yesNoField({ label: "Stone former" }),
    singleKidney: yesNoField({ label: "Single kidney" }),
    transplantKidney: yesNoField({ label: "Transplant kidney" }),
    conduitOrNeobladder: yesNoField({ label: "Conduit or neobladder" }),
    immuneSuppression: yesNoField({ label: "Immune suppression" }),
    cordInjuryT6OrAbove: yesNoField({ label: "Cord injury at T6 or above" }),
    ascites: yesNoField({ label: "Ascites" }),
    steroids: yesNoField({ label: "Steroids" }),
    malnutrition: yesNoField({ label: "Malnutrition" }),
    diabetes: yesNoField({ label: "Diabetes" }),
    chemotherapy: yesNoField({ label: "Chemotherapy" }),
    hospice: yesNoField({ label: "Hospice" }),
    toldBy: lineField({ label: "Told by", hint: "blank: known here" }),
    when: whenField({ label: "Known since, or told on" }, context),
  }),
  check: ({ toldBy, when, ...typed }) =>
    Object.values(typed).some((fact) => fact !== undefined)
      ? []
      : [{ code: "nothing-said", field: "allergies" }],
  entry: ({ toldBy, when, ...typed }): EntryOf<"conditions noted"> => ({
    kind: "conditions noted",
    ...when,
    payload: { conditions: saidOf(typed, toldBy !== null), ...(toldBy !== null && { toldBy }) },
  }),
});
