import { flagField } from "#shared/record/field/choice-field.ts";
import { filledField } from "#shared/record/field/text-field.ts";
import { plainForm } from "#shared/record/form.ts";
import { NOTE_LIMIT } from "#shared/tube/entry-limits.ts";
import type { Payload } from "#shared/tube/payloads.ts";

/** Take an entry out of what counts. It stays in the story with this reason. */
export const voidForm = plainForm({
  fields: () => ({
    reason: filledField({ label: "Why it does not count" }, "why it does not count", NOTE_LIMIT),
    wrongPatient: flagField({ label: "It belongs to another patient" }),
  }),
  entry: ({ reason, wrongPatient }): Payload<"voided"> => ({ reason, wrongPatient }),
});
