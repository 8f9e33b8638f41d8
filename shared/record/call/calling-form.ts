import { type AnswerWord, callees, isReached, outcomeIn, tryOutcomes } from "#shared/call/outcomes.ts";
import { minuteOf } from "#shared/call/part-now.ts";
import { theirTime } from "#shared/call/reach.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import type {
  AnsweredInCall,
  CallingContext,
  CallTyped,
  QuestionInCall,
} from "#shared/record/call/calling-context.ts";
import { HANDED_HINT, personIn } from "#shared/record/call/handed-to.ts";
import { answerField } from "#shared/record/field/answer-field.ts";
import { choiceField, choicesOf } from "#shared/record/field/choice-field.ts";
import { comingDayField } from "#shared/record/field/day-field.ts";
import { minuteField } from "#shared/record/field/minute-field.ts";
import { orBlank } from "#shared/record/field/or-blank.ts";
import { ringField } from "#shared/record/field/ring-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import type { FieldSpec, FieldSpecs, Texts } from "#shared/record/field-spec.ts";
import { form } from "#shared/record/form.ts";
import type { Minute } from "#shared/visit/room.ts";
import { printMinute } from "#shared/words/offers.ts";

type Named = `ask-${string}`;

/** The name of a question's field: of the patient its own, of a tube with the tube's number. Without blanks, as names of fields are. */
export const questionField = ({ id, tube }: Pick<QuestionInCall, "id" | "tube">): Named =>
  `ask-${tube === null ? "" : `${tube.number}-`}${encodeURIComponent(id)}`;

type Said = { readonly [question: Named]: AnswerWord | null };

/** Whether an answer opens what its question holds. */
export const opens = ({ opensOn }: QuestionInCall, says: AnswerWord | null | undefined): boolean =>
  opensOn !== null && says === opensOn;

/** The questions whose answers open a red flag, by what can be read so far. */
export const opened = (
  questions: readonly QuestionInCall[],
  said: Partial<Said>,
): readonly QuestionInCall[] =>
  questions.filter((question) => question.flag !== null && opens(question, said[questionField(question)]));

/** Whether what is typed so far says that somebody was reached: then the questions are asked. */
export function reachesSomebody({ outcome }: Texts): boolean {
  const named = outcomeIn(outcome);
  return named !== undefined && isReached(named);
}

const reachedNobody = (texts: Texts): boolean => !reachesSomebody(texts);

/** Not known is not well; and a "no" to whether it drains does not agree with a volume. */
function doubtOf(question: QuestionInCall, says: AnswerWord | null, drained: string | null): string | null {
  const leads = question.flag !== null || question.ifSo.length > 0;
  if (says === "does not know") return leads ? "not known is not well: find out, or ring again" : null;
  return says === "no" && opens(question, says) ? drained : null;
}

const questionFields = ({ questions }: CallingContext): FieldSpecs<Said> =>
  Object.fromEntries(
    questions.map((question) => {
      const { asks, drained } = question;
      const field = answerField({ label: asks });
      const spec: FieldSpec<AnswerWord | null> = {
        ...field,
        belongs: reachesSomebody,
        doubt: (says) => doubtOf(question, says, drained),
      };
      return [questionField(question), spec];
    }),
  ) as FieldSpecs<Said>;

type OwnFields = {
  readonly outcome: CallTyped["outcome"];
  readonly to: CallTyped["to"];
  readonly number: string | null;
  readonly backOn: NonNullable<CallTyped["back"]>["on"] | null;
  readonly backAt: Minute | null;
  readonly interpreter: string | null;
};
type LastFields = {
  readonly handedTo: string | null;
  readonly note: string | null;
  readonly when: Pick<CallTyped, "when" | "time">;
};

const ownFields = (context: CallingContext): FieldSpecs<OwnFields> => ({
  outcome: choiceField({ label: "The call", what: "how the call came out" }, choicesOf(tryOutcomes)),
  to: choiceField({ label: "Rung", what: "who was rung", initial: context.to }, choicesOf(callees)),
  number: ringField({ label: "On the number", ...(context.number && { initial: context.number }) }),
  backOn: {
    ...orBlank(comingDayField({ label: "Ring back on", what: "the day" }, context)),
    belongs: reachedNobody,
  },
  backAt: {
    ...minuteField({ label: "Ring back at" }),
    belongs: reachedNobody,
    doubt: (at) => outsideHours(at, context),
  },
  interpreter: lineField({
    label: "Through an interpreter",
    hint: context.interpreter ?? "name, or by telephone; blank where none was needed",
  }),
});

/** Nobody is rung at night, by the patient's clock: what is asked for outside of the hours is tried at their nearest end. */
function outsideHours(at: Minute | null, { hours, clocks, today }: CallingContext): string | null {
  if (at === null || hours === null) return null;
  const time = printMinute(at);
  const theirs = theirTime(today, time, clocks);
  const [from, to] = [hours.from * 60, hours.to * 60];
  if (minuteOf(theirs) >= from && minuteOf(theirs) < to) return null;
  const there = theirs === time ? "" : ` by the patient's clock, which shows ${theirs} then`;
  return `outside of the hours in which somebody is rung, ${printMinute(from)} to ${printMinute(to)}${there}`;
}

const lastFields = (context: CallingContext): FieldSpecs<LastFields> => ({
  handedTo: lineField({
    label: "Red flags handed to",
    hint: HANDED_HINT,
  }),
  note: noteField({ label: "What else was said" }),
  when: whenField({ label: "Called on", initial: "now" }, context),
});

type Values = OwnFields & LastFields & Said;

const answersIn = (values: Values, { questions }: CallingContext): readonly AnsweredInCall[] =>
  questions.flatMap((question) => {
    const says = values[questionField(question)] ?? null;
    return says === null ? [] : [{ question, says }];
  });

function checked(values: Values, context: CallingContext): readonly Refusal[] {
  const answers = answersIn(values, context);
  const [first] = answers;
  const refusals: Refusal[] = [];
  if (!isReached(values.outcome) && first !== undefined)
    refusals.push({ code: "answers-without-contact", field: questionField(first.question) });
  if (values.outcome === "call back" && values.backOn === null)
    refusals.push({ code: "call-back-without-day", field: "backOn" });
  if (values.backAt !== null && values.backOn === null && values.outcome !== "call back")
    refusals.push({ code: "call-back-without-day", field: "backOn" });
  const flags = opened(context.questions, values);
  if (flags.length > 0 && values.handedTo === null)
    refusals.push({ code: "flag-without-person", field: "handedTo" });
  if (flags.length === 0 && values.handedTo !== null)
    refusals.push({ code: "handed-without-flag", field: "handedTo" });
  return refusals;
}

/** One call about a patient and all of that patient's tubes: how it came out, what was answered, whom a red flag was handed to. */
export const callingForm = form({
  fields: (context: CallingContext): FieldSpecs<Values> => ({
    ...ownFields(context),
    ...questionFields(context),
    ...lastFields(context),
  }),
  check: checked,
  entry: (values, context): CallTyped => {
    const { outcome, to, number, backOn, backAt, interpreter, handedTo, note, when } = values;
    return {
      ...when,
      to,
      number,
      outcome,
      back: backOn === null ? null : { on: backOn, at: backAt === null ? null : printMinute(backAt) },
      interpreter,
      answers: answersIn(values, context),
      handed: handedTo === null ? null : { to: personIn(handedTo) },
      note,
    };
  },
});
