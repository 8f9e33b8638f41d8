import type { Refusal } from "#shared/errors/refusal.ts";
import { choicesOf, optionalChoiceField } from "#shared/record/field/choice-field.ts";
import { optionalLengthField } from "#shared/record/field/length-field.ts";
import { sideField } from "#shared/record/field/side-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form, type TubeInForm } from "#shared/record/form.ts";
import { sourced } from "#shared/record/sourced.ts";
import { factFields, factsOf, SIZE_HINT } from "#shared/record/tube/fact-fields.ts";
import { insideRefusals } from "#shared/record/tube/from-shelf.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import { modes, type Side } from "#shared/tube/vocabulary.ts";
import { modeWords } from "#shared/words/modes.ts";

/** A side is found out here where it was not seen yet; one that was seen and now reads otherwise is two reports to reconcile. */
function sideAgainst(side: Fact<Side>, tube: TubeInForm): Refusal | null {
  const [said, stands] = [known(side), known(tube.side)];
  if (said === "not sided" && kindOf(tube.kind).sided) return { code: "side-missing", field: "side" };
  if (tube.side.certainty !== "confirmed" || said === stands) return null;
  return { code: "side-stands", field: "side", args: { side: tube.side.value } };
}

/** Note facts of the tube in place: only what is typed is said. */
export const factsForm = form({
  fields: (context: FormContext) => ({
    size: optionalLengthField({ label: "Size", hint: SIZE_HINT }, "tube outside"),
    ...factFields(context),
    side: sideField({ label: "Side", hint: "where it was not known; blank: as it stands", detail: true }),
    mode: optionalChoiceField({ label: "Mode", detail: true }, choicesOf(modes, modeWords), "Not said"),
    toldBy: lineField({
      label: "Told by",
      hint: "blank: seen here; a letter, the patient, another hospital",
    }),
    when: whenField({ label: "Seen or told on" }, context),
    note: noteField({ label: "Note", detail: true }),
  }),
  check: ({ side, mode, note, toldBy, when, ...typed }, { tube }) => {
    const swapped = side === undefined || tube === null ? null : sideAgainst(side, tube);
    if (swapped !== null) return [swapped];
    const said = Object.keys(factsOf(typed, { toldByOthers: false, blank: "says nothing" })).length > 0;
    return said || side !== undefined || mode !== undefined || note !== null
      ? insideRefusals(typed)
      : [{ code: "nothing-said", field: "size" }];
  },
  entry: ({ side, mode, note, toldBy, when, ...typed }): EntryOf<"facts noted"> => ({
    kind: "facts noted",
    ...when,
    payload: {
      facts: factsOf(typed, { toldByOthers: toldBy !== null, blank: "says nothing" }),
      ...(side !== undefined && { side: sourced(side, toldBy !== null) }),
      ...(mode !== undefined && { mode }),
      ...(toldBy !== null && { toldBy }),
      note,
    },
  }),
});
