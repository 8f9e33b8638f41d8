import { refusalsOfTime } from "#shared/record/call/after-told.ts";
import type { FlagContext } from "#shared/record/call/flag-context.ts";
import { filledField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { form } from "#shared/record/form.ts";
import { NOTE_LIMIT } from "#shared/tube/entry-limits.ts";

/** Say what was done about a red flag, and by whom: it closes it. */
export const flagDoneForm = form({
  fields: (context: FlagContext) => ({
    what: filledField({ label: "What was done", long: true }, "what was done", NOTE_LIMIT),
    by: filledField({ label: "By whom" }, "who did it"),
    when: whenField({ label: "Done at", initial: "now" }, context),
  }),
  check: ({ when }, { told }) => refusalsOfTime("when", when, told),
  entry: (typed) => typed,
});
