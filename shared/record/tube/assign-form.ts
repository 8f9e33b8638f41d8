import { onDay } from "#shared/day/when.ts";
import { choiceField } from "#shared/record/field/choice-field.ts";
import { ownerField } from "#shared/record/field/owner-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { stepKinds } from "#shared/tube/step-kinds.ts";
import { stepNames } from "#shared/words/steps.ts";

const steps = stepKinds.map((value) => ({ value, label: stepNames[value] }));

/** Give a step to a role or a person. */
export const assignForm = form({
  fields: ({ staff }: FormContext) => ({
    step: choiceField({ label: "Step", what: "which step" }, steps),
    owner: ownerField({ label: "Goes to" }, staff),
  }),
  entry: ({ step, owner }, { today }): EntryOf<"step assigned"> => ({
    kind: "step assigned",
    when: onDay(today),
    time: null,
    payload: { step, owner },
  }),
});
