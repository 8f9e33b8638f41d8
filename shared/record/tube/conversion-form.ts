import { kindField } from "#shared/record/field/kind-field.ts";
import { planField } from "#shared/record/field/plan-field.ts";
import { sideField } from "#shared/record/field/side-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { notBeforeTube } from "#shared/record/not-before-tube.ts";
import { SIZE_HINT } from "#shared/record/tube/fact-fields.ts";
import { sizeOrShelfField } from "#shared/record/tube/from-shelf.ts";
import { openingDetails, openingOf, openingRefusals } from "#shared/record/tube/opening-fields.ts";

/** The side goes along with the tract unless another is typed. */
const carried = <V extends Parameters<typeof openingRefusals>[0]>(values: V, { tube }: FormContext): V => {
  const typed = values.side !== undefined || values.kind.side !== null;
  return typed || tube === null ? values : { ...values, side: tube.side };
};

/** Record a conversion: it ends the tube's record and opens the next one in the same act. */
export const conversionForm = form({
  fields: (context: FormContext) => ({
    kind: kindField({ label: "Converted to" }),
    size: sizeOrShelfField({ label: "Size", hint: SIZE_HINT }, context),
    when: whenField({ label: "Converted on" }, context),
    plan: planField({ label: "Plan" }, context),
    side: sideField({ label: "Side", hint: "blank: as before", detail: true }),
    ...openingDetails(context),
  }),
  check: (values, context) => [
    ...openingRefusals(carried(values, context)),
    ...notBeforeTube("plan", values.plan?.by ?? null, values.when.when.earliest),
  ],
  entry: (values, context): EntryOf<"converted"> => ({
    kind: "converted",
    ...values.when,
    payload: {
      closes: context.tube?.id ?? "",
      opens: context.opens.tubeId,
      opening: openingOf(carried(values, context), { number: context.opens.number, toldByOthers: false }),
    },
  }),
});
