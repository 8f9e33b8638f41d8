import { comingDayField } from "#shared/record/field/day-field.ts";
import { orBlank } from "#shared/record/field/or-blank.ts";
import { filledField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { notBeforeDecided } from "#shared/record/not-before-decided.ts";

/** A physician decides how it goes on where nobody was reached. A record that has not ended goes on being called about. */
export const notReachedForm = form({
  fields: (context: FormContext) => ({
    again: orBlank(
      comingDayField({ label: "Call again from", what: "the day from which the calls go on" }, context),
    ),
    decidedBy: filledField({ label: "Decided by" }, "which physician decided it"),
    reason: filledField({ label: "What was decided, and why", long: true }, "what was decided"),
    when: whenField({ label: "Decided on" }, context),
  }),
  check: ({ again, when }, { tubes }) => {
    if (again !== null) return notBeforeDecided("again", again, when);
    return tubes.some(({ status }) => status !== "ended")
      ? [{ code: "calls-go-on", field: "again" } as const]
      : [];
  },
  entry: ({ when, ...payload }): EntryOf<"not reached decided"> => ({
    kind: "not reached decided",
    ...when,
    payload,
  }),
});
