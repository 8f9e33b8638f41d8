import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { readDay } from "#shared/day/read-day.ts";
import { onDay } from "#shared/day/when.ts";
import { parsed } from "#shared/errors/refusal.ts";
import { boresField } from "#shared/record/field/bores-field.ts";
import { choicesOf, factChoiceField } from "#shared/record/field/choice-field.ts";
import { kindField } from "#shared/record/field/kind-field.ts";
import { optionalLengthField } from "#shared/record/field/length-field.ts";
import { passedDay } from "#shared/record/field/passed-day.ts";
import { shelfField } from "#shared/record/field/shelf-field.ts";
import { lineField } from "#shared/record/field/text-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { notBeforeTube } from "#shared/record/not-before-tube.ts";
import { SIZE_HINT } from "#shared/record/tube/fact-fields.ts";
import { reasonInWords } from "#shared/record/tube/plan-reason.ts";
import { thingsOf } from "#shared/record/tube/plan-things.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";

const plannedDayField = ({ today }: FormContext): FieldSpec<Day | null> => ({
  label: "Planned for",
  hint: "30 oct, +14; blank if no day is set",
  read: (text) => (text.trim() === "" ? parsed(null) : readDay(text, { today, direction: "future" })),
  echo: (day) => (day === null ? "" : printDay(day)),
  doubt: (day) => passedDay(day, today),
});

/** What lies over the wire beside the tube: most plans do without. */
const besideFields = (context: FormContext) => ({
  stiffenerType: shelfField(
    { label: "Stiffener, from the shelf", hint: "its name", detail: true },
    ["stiffener"],
    context,
  ),
  sheathType: shelfField(
    { label: "Sheath, from the shelf", hint: "its name", detail: true },
    ["sheath"],
    context,
  ),
  sheathInside: optionalLengthField(
    { label: "Inside of the sheath", hint: "4.2 mm; a sheath is sized by its inside", detail: true },
    "bore",
  ),
  sheathLength: optionalLengthField({ label: "Length of the sheath, cm", detail: true }, "tube length"),
});

const toComeFields = (context: FormContext) => ({
  tubeType: shelfField(
    { label: "Tube to come, from the shelf", hint: "its name; blank: type its size" },
    ["tube"],
    context,
  ),
  size: optionalLengthField({ label: "Size of the tube to come", hint: SIZE_HINT }, "tube outside"),
  takes: optionalLengthField(
    { label: "The tube to come takes a wire of (label)", hint: ".035 in, as the package says" },
    "takes",
  ),
  kind: kindField({
    label: "Kind of the tube to come",
    ...(context.tube !== null && { initial: kindOf(context.tube.kind).name }),
  }),
  fullLength: optionalLengthField(
    { label: "Full length of the tube to come, cm", detail: true },
    "tube length",
  ),
  bores: boresField({
    label: "Its insides, measured",
    hint: "hub 2.0 mm, shaft 1.9 mm, end hole .038 in",
    detail: true,
  }),
  endHole: factChoiceField(
    { label: "Its end hole", detail: true },
    choicesOf<"open" | "closed">(["open", "closed"]),
  ),
});

const offeredHint = (offered: readonly string[]): string =>
  offered.map((reason, index) => `${index + 1} ${reason}`).join("; ");

/**
 * Plan the exchange: the wire, the tube to come and what else lies over the wire, from the clinic's shelf or as typed. What was typed goes
 * before the shelf. `seen`, `checkedOn` and whether a reason is asked are filled by who computes the answers.
 */
export const plannedExchangeForm = form({
  fields: (context: FormContext) => ({
    on: plannedDayField(context),
    wireType: shelfField(
      { label: "Wire, from the shelf", hint: "its name; blank: type its size" },
      ["wire"],
      context,
    ),
    wire: optionalLengthField({ label: "Wire", hint: ".035 in, .038 in" }, "wire"),
    wireLength: optionalLengthField({ label: "Length of the wire, cm", hint: "145" }, "wire length"),
    ...toComeFields(context),
    ...besideFields(context),
    agreedBy: lineField({ label: "Who agreed the plan", hint: "a name; blank: nobody yet" }),
    reason: {
      ...lineField({
        label: "Reason to go on all the same",
        hint: offeredHint(context.planReasons ?? []) || "where the clinic's row asks for one",
      }),
      echo: (reason: string | null) => reasonInWords(reason, context.planReasons ?? []) ?? "",
    },
  }),
  check: ({ on }, { tube }) => notBeforeTube("on", on, tube?.inSince ?? null),
  entry: ({ on, kind, agreedBy, reason, ...typed }, context): EntryOf<"exchange planned"> => {
    const things = thingsOf(typed);
    return {
      kind: "exchange planned",
      when: onDay(context.today),
      time: null,
      payload: {
        on,
        kind: kind.kind,
        size: things.toCome.outside,
        takes: things.toCome.inside.takes,
        wire: things.wire.outside,
        things,
        agreedBy,
        reason: reasonInWords(reason, context.planReasons ?? []),
        seen: [],
      },
    };
  },
});
