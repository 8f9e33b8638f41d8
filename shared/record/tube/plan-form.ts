import { onDay } from "#shared/day/when.ts";
import { parsed, unread } from "#shared/errors/refusal.ts";
import { passedDay } from "#shared/record/field/passed-day.ts";
import { PLAN_EXAMPLES, readPlan } from "#shared/record/field/plan-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { notBeforeTube } from "#shared/record/not-before-tube.ts";
import type { OperatorPlan } from "#shared/tube/payloads.ts";
import { printPlan } from "#shared/words/plan.ts";

/** A plan is what this form records, so a blank is no entry here. */
const neededPlanField = (context: FormContext): FieldSpec<OperatorPlan> => ({
  label: "Plan",
  hint: PLAN_EXAMPLES,
  read: (text) => {
    const plan = readPlan(text, context);
    if (!plan.ok) return plan;
    return plan.value === null
      ? unread("text-missing", { what: "the plan, like exchange by 30 oct" })
      : parsed(plan.value);
  },
  echo: printPlan,
  doubt: (plan) => passedDay(plan.by, context.today),
});

/** Record the operator's plan. */
export const planForm = form({
  fields: (context: FormContext) => ({ plan: neededPlanField(context) }),
  check: ({ plan }, { tube }) => notBeforeTube("plan", plan.by, tube?.inSince ?? null),
  entry: ({ plan }, { today }): EntryOf<"plan recorded"> => ({
    kind: "plan recorded",
    when: onDay(today),
    time: null,
    payload: { plan },
  }),
});
