import { yesNoField } from "#shared/record/field/choice-field.ts";
import { optionalLengthField } from "#shared/record/field/length-field.ts";
import { filledField, lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { sourced } from "#shared/record/sourced.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { NOTE_LIMIT } from "#shared/tube/entry-limits.ts";

const toldByField = () => lineField({ label: "Told by", hint: "blank: seen here" });

/** Record that the tube was pulled back. */
export const partlyDislodgedForm = form({
  fields: (context: FormContext) => ({
    when: whenField({ label: "Pulled back on" }, context),
    externalLength: optionalLengthField({ label: "External length now, skin to hub, cm" }, "external length"),
    toldBy: toldByField(),
    note: noteField({ label: "Note" }),
  }),
  entry: ({ when, externalLength, toldBy, note }): EntryOf<"partly dislodged"> => ({
    kind: "partly dislodged",
    ...when,
    payload: {
      externalLength: sourced(externalLength ?? unknownFact, toldBy !== null),
      ...(toldBy !== null && { toldBy }),
      note,
    },
  }),
});

/** Record that the tube fell out. */
export const fellOutForm = form({
  fields: (context: FormContext) => ({
    when: whenField({ label: "Fell out on" }, context),
    whole: yesNoField({ label: "It came out whole" }),
    toldBy: toldByField(),
    note: noteField({ label: "Note" }),
  }),
  entry: ({ when, whole, toldBy, note }): EntryOf<"fell out"> => ({
    kind: "fell out",
    ...when,
    payload: {
      whole: sourced(whole ?? unknownFact, toldBy !== null),
      ...(toldBy !== null && { toldBy }),
      note,
    },
  }),
});

/** Record the decision that a tube which is out is not replaced: it ends the record. */
export const notReplacedForm = form({
  fields: (context: FormContext) => ({
    decidedBy: filledField({ label: "Decided by" }, "who decided it"),
    reason: filledField({ label: "Reason" }, "the reason", NOTE_LIMIT),
    when: whenField({ label: "Decided on" }, context),
  }),
  entry: ({ decidedBy, reason, when }): EntryOf<"not replaced"> => ({
    kind: "not replaced",
    ...when,
    payload: { decidedBy, reason },
  }),
});
