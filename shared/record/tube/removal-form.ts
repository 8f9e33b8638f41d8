import { neededYesNoField, yesNoField } from "#shared/record/field/choice-field.ts";
import { comingDayField } from "#shared/record/field/day-field.ts";
import { orBlank } from "#shared/record/field/or-blank.ts";
import { lineField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { sourced } from "#shared/record/sourced.ts";
import { unknownFact } from "#shared/tube/certainty.ts";

/** Record a removal. Told by somebody, it stays to be confirmed. */
export const removalForm = form({
  fields: (context: FormContext) => ({
    whole: neededYesNoField({ label: "It came out whole" }, "yes, no or ?"),
    loopReleased: yesNoField({ label: "The loop was released first" }),
    when: whenField({ label: "Removed on" }, context),
    byWhom: lineField({ label: "Removed by" }),
    seenHow: lineField({ label: "Seen how", hint: "under imaging, at the bedside" }),
    toldBy: lineField({ label: "Told by", hint: "blank: done here" }),
    stringOut: yesNoField({ label: "Its string came out too", detail: true }),
    siteCheckOn: orBlank({
      ...comingDayField({ label: "Site looked at on", what: "the day" }, context),
      detail: true,
    }),
  }),
  entry: ({
    whole,
    loopReleased,
    stringOut,
    when,
    byWhom,
    seenHow,
    siteCheckOn,
    toldBy,
  }): EntryOf<"removed"> => ({
    kind: "removed",
    ...when,
    payload: {
      whole: sourced(whole, toldBy !== null),
      loopReleased: sourced(loopReleased ?? unknownFact, toldBy !== null),
      ...(stringOut && { stringOut: sourced(stringOut, toldBy !== null) }),
      ...(siteCheckOn !== null && { siteCheckOn }),
      seenHow,
      byWhom,
      toldBy,
    },
  }),
});
