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
import { shelfOrSizeField } from "#shared/record/field/shelf-or-size-field.ts";
import { lineField } from "#shared/record/field/text-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { insideWider } from "#shared/record/inside-wider.ts";
import { notBeforeTube } from "#shared/record/not-before-tube.ts";
import { reasonInWords } from "#shared/record/tube/plan-reason.ts";
import { thingsOf } from "#shared/record/tube/plan-things.ts";
import type { Length } from "#shared/size/length.ts";
import { printLength } from "#shared/size/print-length.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";
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
  stiffener: shelfOrSizeField(
    { label: "Stiffener", hint: "5 f, or its name on the shelf", detail: true },
    { thing: "tube outside", sort: "stiffener" },
    context,
  ),
  sheath: shelfOrSizeField(
    { label: "Sheath, by its inside", hint: "4.2 mm, or its name on the shelf", detail: true },
    { thing: "bore", sort: "sheath" },
    context,
  ),
  sheathLength: optionalLengthField({ label: "Length of the sheath, cm", detail: true }, "tube length"),
});

const toComeFields = (context: FormContext) => ({
  size: shelfOrSizeField(
    { label: "Tube to come", hint: "8 f, or its name on the shelf" },
    { thing: "tube outside", sort: "tube" },
    context,
  ),
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

/** A wire that is longer than any on the shelf may be another clinic's, or a slip: asked, not refused. */
function longerThanOurs(length: Fact<Length> | undefined, { shelf }: FormContext): string | null {
  const ours = shelf.flatMap(({ sort, length: of }) => (sort === "wire" ? (known(of) ?? []) : []));
  const typed = length === undefined ? undefined : known(length);
  const longest = Math.max(0, ...ours) as Length;
  if (typed === undefined || longest === 0 || typed <= longest) return null;
  return `The longest wire on the shelf is ${printLength(longest, "cm")}: is ${printLength(typed, "cm")} meant?`;
}

/**
 * Plan the exchange: the wire, the tube to come and what else lies over the wire, from the clinic's shelf or as typed. What was typed goes
 * before the shelf. `seen`, `checkedOn` and whether a reason is asked are filled by who computes the answers.
 */
export const plannedExchangeForm = form({
  fields: (context: FormContext) => ({
    on: plannedDayField(context),
    wire: shelfOrSizeField(
      { label: "Wire", hint: ".035 in, or its name on the shelf" },
      { thing: "wire", sort: "wire" },
      context,
    ),
    wireLength: {
      ...optionalLengthField({ label: "Length of the wire, cm", hint: "145" }, "wire length"),
      doubt: (length: Fact<Length> | undefined) => longerThanOurs(length, context),
    },
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
  check: ({ on, ...typed }, { tube }) => {
    const { outside, inside } = thingsOf(typed).toCome;
    return [
      ...notBeforeTube("on", on, tube?.inSince ?? null),
      ...insideWider({ sort: "tube", outside, takes: inside.takes, bores: inside.bores }),
    ];
  },
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
