import { neededYesNoField } from "#shared/record/field/choice-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { sourced } from "#shared/record/sourced.ts";

const ANSWER = "yes, no or ?";

const lastFields = (label: string, context: FormContext) => ({
  when: whenField({ label }, context),
  toldBy: lineField({ label: "Told by", hint: "blank: seen here" }),
  note: noteField({ label: "Note" }),
});

type Last = { readonly toldBy: string | null; readonly note: string | null };

const lastOf = ({ toldBy, note }: Last) => ({ ...(toldBy !== null && { toldBy }), note });

/** Record that nothing runs through the tube. It stands as an alarm until somebody has looked. */
export const blockedForm = form({
  fields: (context: FormContext) => lastFields("Blocked since", context),
  entry: ({ when, ...last }): EntryOf<"blocked"> => ({ kind: "blocked", ...when, payload: lastOf(last) }),
});

/** Record that it runs again. */
export const unblockedForm = form({
  fields: (context: FormContext) => ({
    when: whenField({ label: "Unblocked on" }, context),
    how: lineField({ label: "How", hint: "flushed, a wire, a fibrinolytic" }),
    note: noteField({ label: "Note", detail: true }),
  }),
  entry: ({ when, how, note }): EntryOf<"unblocked"> => ({
    kind: "unblocked",
    ...when,
    payload: { how, note },
  }),
});

/** Record a leak round the tube. */
export const leakingForm = form({
  fields: (context: FormContext) => ({
    soaking: neededYesNoField({ label: "It soaks the dressing" }, ANSWER),
    ...lastFields("Leaking since", context),
  }),
  entry: ({ when, soaking, ...last }): EntryOf<"leaking"> => ({
    kind: "leaking",
    ...when,
    payload: { soaking: sourced(soaking, last.toldBy !== null), ...lastOf(last) },
  }),
});

/** Record an infection of the site or of what it drains. */
export const infectedForm = form({
  fields: (context: FormContext) => ({
    fever: neededYesNoField({ label: "Fever of 38.0 C or more, or shaking chills" }, ANSWER),
    ...lastFields("Infected since", context),
  }),
  entry: ({ when, fever, ...last }): EntryOf<"infected"> => ({
    kind: "infected",
    ...when,
    payload: { fever: sourced(fever, last.toldBy !== null), ...lastOf(last) },
  }),
});

/** Record bleeding. */
export const bledForm = form({
  fields: (context: FormContext) => ({
    heavy: neededYesNoField({ label: "Heavy and bright" }, ANSWER),
    ...lastFields("Bled on", context),
  }),
  entry: ({ when, heavy, ...last }): EntryOf<"bled"> => ({
    kind: "bled",
    ...when,
    payload: { heavy: sourced(heavy, last.toldBy !== null), ...lastOf(last) },
  }),
});

/** Record that the tube broke, and whether a piece is left inside. */
export const brokenForm = form({
  fields: (context: FormContext) => ({
    fragmentInside: neededYesNoField({ label: "A piece is left inside" }, ANSWER),
    part: lineField({ label: "What broke", hint: "hub, shaft at the skin, string" }),
    ...lastFields("Broke on", context),
  }),
  entry: ({ when, fragmentInside, part, ...last }): EntryOf<"broken"> => ({
    kind: "broken",
    ...when,
    payload: { fragmentInside: sourced(fragmentInside, last.toldBy !== null), part, ...lastOf(last) },
  }),
});
