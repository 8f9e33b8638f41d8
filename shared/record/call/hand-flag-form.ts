import { refusalsOfTime } from "#shared/record/call/after-told.ts";
import type { FlagContext } from "#shared/record/call/flag-context.ts";
import { saysNobody } from "#shared/record/call/handed-to.ts";
import { filledField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { form } from "#shared/record/form.ts";

const PERSON = "the name of the person who has it now";

/** Hand a red flag to a named person, at a time; again where another person takes it. */
export const handFlagForm = form({
  fields: (context: FlagContext) => ({
    to: filledField({ label: "Handed to", hint: "a named person, who has said that they have it" }, PERSON),
    at: whenField({ label: "Handed over at", initial: "now" }, context),
    note: noteField({ label: "What was said", detail: true }),
  }),
  check: ({ to, at }, { told }) => [
    ...(saysNobody(to) ? [{ code: "text-missing" as const, field: "to", args: { what: PERSON } }] : []),
    ...refusalsOfTime("at", at, told),
  ],
  entry: (typed) => typed,
});
