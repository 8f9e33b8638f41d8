import { comingDayField } from "#shared/record/field/day-field.ts";
import { ownerField } from "#shared/record/field/owner-field.ts";
import { filledField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { notBeforeDecided } from "#shared/record/not-before-decided.ts";
import { notBeforeTube } from "#shared/record/not-before-tube.ts";

/** Decide the removal: who does it, by when. It closes no other step. */
export const removalDecisionForm = form({
  fields: (context: FormContext) => ({
    by: comingDayField({ label: "Out by", what: "the day by which it is out" }, context),
    owner: ownerField({ label: "Who takes it out" }, context.staff),
    decidedBy: filledField({ label: "Decided by" }, "who decided it"),
    reason: noteField({ label: "Reason" }),
    when: whenField({ label: "Decided on" }, context),
  }),
  check: ({ by, when }, { tube }) => {
    const before = notBeforeTube("by", by, tube?.inSince ?? null);
    return before.length > 0 ? before : notBeforeDecided("by", by, when);
  },
  entry: ({ by, owner, decidedBy, reason, when }): EntryOf<"removal decided"> => ({
    kind: "removal decided",
    ...when,
    payload: { decidedBy, by, owner, reason },
  }),
});
