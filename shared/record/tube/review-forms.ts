import type { Day } from "#shared/day/day.ts";
import { onDay } from "#shared/day/when.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { choiceField } from "#shared/record/field/choice-field.ts";
import { comingDayField } from "#shared/record/field/day-field.ts";
import { orBlank } from "#shared/record/field/or-blank.ts";
import { ownerField, type TypedOwner } from "#shared/record/field/owner-field.ts";
import { filledField, lineField, noteField } from "#shared/record/field/text-field.ts";
import { wordsField } from "#shared/record/field/words-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { notBeforeTube } from "#shared/record/not-before-tube.ts";
import { closable, type Decision, decidedKinds, decisionsFor } from "#shared/review/decisions.ts";
import { decidedNames, decisionChoices } from "#shared/words/decisions.ts";
import { stepNames } from "#shared/words/steps.ts";

/** Ask for a review of the tube. */
export const reviewAskForm = form({
  fields: (context: FormContext) => ({
    by: comingDayField({ label: "Review by", what: "the day by which it is reviewed" }, context),
    reason: lineField({ label: "Why" }),
    askedBy: lineField({ label: "Asked by", hint: "blank: you" }),
  }),
  check: ({ by }, { tube }) => notBeforeTube("by", by, tube?.inSince ?? null),
  entry: ({ by, reason, askedBy }, { today }): EntryOf<"review asked"> => ({
    kind: "review asked",
    when: onDay(today),
    time: null,
    payload: { by, reason, askedBy },
  }),
});

const decisionField = (label: string, { tube }: FormContext): FieldSpec<Decision> =>
  choiceField(
    { label, what: "what was decided" },
    decisionsFor(tube?.role ?? "collection").map((value) => ({ value, label: decisionChoices[value] })),
  );

const dayField = (label: string, context: FormContext): FieldSpec<Day> =>
  comingDayField({ label, what: "the day by which" }, context);

const whoField = (label: string, { staff }: FormContext): FieldSpec<TypedOwner> =>
  ownerField({ label, initial: "any nurse" }, staff);

type Said = { readonly what: Decision | null; readonly by: Day | null; readonly owner: TypedOwner };
type Typed = {
  readonly what: Decision;
  readonly by: Day;
  readonly owner: TypedOwner;
  readonly what2: Decision | null;
  readonly by2: Day | null;
  readonly owner2: TypedOwner;
  readonly what3: Decision | null;
  readonly by3: Day | null;
  readonly owner3: TypedOwner;
};

/** Each decision with the fields that it stands in. */
const saidIn = (typed: Typed): readonly (Said & { readonly at: "" | "2" | "3" })[] => [
  { what: typed.what, by: typed.by, owner: typed.owner, at: "" },
  { what: typed.what2, by: typed.by2, owner: typed.owner2, at: "2" },
  { what: typed.what3, by: typed.by3, owner: typed.owner3, at: "3" },
];

function unfinished(typed: Typed, inSince: Day | null): readonly Refusal[] {
  const said = saidIn(typed);
  return said.flatMap(({ what, by, at }, index): readonly Refusal[] => {
    const twice = said.slice(0, index).some((before) => what !== null && before.what === what);
    if (twice) return [{ code: "decided-twice", field: `what${at}` }];
    if (what !== null && by === null)
      return [{ code: "text-missing", field: `by${at}`, args: { what: "the day by which" } }];
    if (what === null && by !== null)
      return [{ code: "text-missing", field: `what${at}`, args: { what: "what was decided" } }];
    return by === null ? [] : notBeforeTube(`by${at}`, by, inSince);
  });
}

/** Decide in review: what, by when, by whom; three at most in one act. It closes the steps that it names and no other. */
export const reviewForm = form({
  fields: (context: FormContext) => ({
    what: decisionField("Decided", context),
    by: dayField("By", context),
    owner: whoField("Who does it", context),
    words: noteField({ label: "In your words" }),
    decidedBy: filledField({ label: "Decided by" }, "who decided it"),
    closes: wordsField(
      {
        label: "Closes",
        initial: "review",
        hint: "with commas between: review, tube check; no other step is closed",
      },
      closable.map((value) => ({ value, words: [stepNames[value].toLowerCase()] })),
    ),
    what2: { ...orBlank(decisionField("Decided too", context)), detail: true },
    by2: { ...orBlank(dayField("By, second", context)), detail: true },
    owner2: { ...whoField("Who does the second", context), detail: true },
    what3: { ...orBlank(decisionField("And decided", context)), detail: true },
    by3: { ...orBlank(dayField("By, third", context)), detail: true },
    owner3: { ...whoField("Who does the third", context), detail: true },
  }),
  check: (typed, { tube }) => unfinished(typed, tube?.inSince ?? null),
  entry: ({ words, decidedBy, closes, ...typed }, { today }): EntryOf<"review decided"> => ({
    kind: "review decided",
    when: onDay(today),
    time: null,
    payload: {
      decidedBy,
      decided: saidIn(typed).flatMap(({ what, by, owner }) =>
        what === null || by === null ? [] : [{ what, by, owner }],
      ),
      words,
      closes: [...(closes ?? [])],
      evidence: null,
    },
  }),
});

const decidedSteps = decidedKinds.map((value) => ({ value, label: decidedNames[value] }));

/** What was decided is done, or given up: a step that no other entry closes. */
export const decisionDoneForm = form({
  fields: (_context: FormContext) => ({
    what: choiceField({ label: "What was decided", what: "which decision" }, decidedSteps),
    how: lineField({ label: "How it came out", hint: "done 3 nov; given up: patient declined" }),
  }),
  entry: ({ what, how }, { today }): EntryOf<"decision done"> => ({
    kind: "decision done",
    when: onDay(today),
    time: null,
    payload: { what, how },
  }),
});
