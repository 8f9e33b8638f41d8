import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { readDay } from "#shared/day/read-day.ts";
import { onDay } from "#shared/day/when.ts";
import { parsed } from "#shared/errors/refusal.ts";
import { kindField } from "#shared/record/field/kind-field.ts";
import { optionalLengthField } from "#shared/record/field/length-field.ts";
import { passedDay } from "#shared/record/field/passed-day.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { notBeforeTube } from "#shared/record/not-before-tube.ts";
import { SIZE_HINT } from "#shared/record/tube/fact-fields.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";

const plannedDayField = ({ today }: FormContext): FieldSpec<Day | null> => ({
  label: "Planned for",
  hint: "30 oct, +14; blank if no day is set",
  read: (text) => (text.trim() === "" ? parsed(null) : readDay(text, { today, direction: "future" })),
  echo: (day) => (day === null ? "" : printDay(day)),
  doubt: (day) => passedDay(day, today),
});

/** Plan the exchange: the tube to come and the wire it goes in over. `seen` is filled by who computes the passage. */
export const plannedExchangeForm = form({
  fields: (context: FormContext) => ({
    on: plannedDayField(context),
    wire: optionalLengthField({ label: "Wire", hint: ".035 in, .038 in" }, "wire"),
    size: optionalLengthField({ label: "Size of the tube to come", hint: SIZE_HINT }, "tube outside"),
    takes: optionalLengthField(
      { label: "The tube to come takes a wire of (label)", hint: ".035 in, as the package says" },
      "takes",
    ),
    kind: kindField({
      label: "Kind of the tube to come",
      ...(context.tube !== null && { initial: kindOf(context.tube.kind).name }),
    }),
  }),
  check: ({ on }, { tube }) => notBeforeTube("on", on, tube?.inSince ?? null),
  entry: ({ on, wire, size, takes, kind }, { today }): EntryOf<"exchange planned"> => ({
    kind: "exchange planned",
    when: onDay(today),
    time: null,
    payload: {
      on,
      kind: kind.kind,
      size: size ?? unknownFact,
      takes: takes ?? unknownFact,
      wire: wire ?? unknownFact,
      seen: [],
    },
  }),
});
