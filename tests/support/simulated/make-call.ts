import type { Draw } from "#seed-demo/seeded.ts";
import type { Callee } from "#shared/call/outcomes.ts";
import type { QuestionInCall } from "#shared/record/call/calling-context.ts";
import { questionField } from "#shared/record/call/calling-form.ts";
import type { Texts } from "#shared/record/field-spec.ts";

/**
 * The chance that one attempt reaches somebody. Published: with verified numbers and four attempts 68 and 73 % of patients were reached
 * (Academic Emergency Medicine 2013, two arms), about 70 %. Of attempts that are alike each leaves 1 - p, four leave (1 - p)^4 = 0.3, so
 * that p = 1 - 0.3^(1/4) = 1 - 0.740 = 0.260.
 */
export const REACHED_IN_FOUR = 0.7;
export const CHANCE = 1 - (1 - REACHED_IN_FOUR) ** (1 / 4);

/** Of a hundred calls that reach somebody so many open a red flag (invented). */
const FLAGGED = 8;
/** Of a hundred red flags so many are handed over in the call itself (invented). */
const HANDED_AT_ONCE = 60;
/** Whom the patient named is reached so often in a hundred tries (invented). */
const OTHERS_REACHED = 30;

export type Call = {
  readonly texts: Texts;
  readonly reached: boolean;
  /** The question whose answer opens a red flag; null: none does. */
  readonly opened: QuestionInCall | null;
  readonly handed: boolean;
};

const unreached = ["voicemail", "no answer", "no answer", "call back", "wrong number", "refused"] as const;

function nobody(draw: Draw, to: Callee): Call {
  const outcome =
    to === "the patient" ? draw.from(unreached) : draw.from(["voicemail", "no answer"] as const);
  const back = outcome === "call back";
  return {
    texts: {
      outcome,
      to,
      // Some ask to be rung at night, and on days on which the clinic is closed.
      ...(back && {
        backOn: `+${draw.between(0, 6)}`,
        backAt: draw.from(["", "10:00", "18:30", "23:00", "3:00"]),
      }),
    },
    reached: false,
    opened: null,
    handed: false,
  };
}

/** What is answered where there is nothing to report. */
const uneventful = ({ opensOn }: QuestionInCall): string => (opensOn === "no" ? "yes" : "no");

function somebody(draw: Draw, to: Callee, questions: readonly QuestionInCall[]): Call {
  const asked = questions.filter(({ flag }) => flag !== null);
  const opened = asked.length > 0 && draw.percent(FLAGGED) ? draw.from(asked) : null;
  const handed = opened !== null && draw.percent(HANDED_AT_ONCE);
  const answers = questions.map((question) => {
    const plain = draw.percent(4) ? "?" : uneventful(question);
    return [questionField(question), question === opened ? (question.opensOn ?? "") : plain];
  });
  return {
    texts: {
      outcome: to === "the patient" ? "reached the patient" : "reached a carer",
      to,
      ...Object.fromEntries(answers),
      ...(opened !== null && { handedTo: handed ? "Dr Example" : "nobody yet" }),
    },
    reached: true,
    opened,
    handed,
  };
}

/** One call as it comes out, with what is typed of it. `questions`: asked for only where there is somebody to ask. */
export function callThatComesOut(draw: Draw, to: Callee, questions: () => readonly QuestionInCall[]): Call {
  const chance = to === "the patient" ? CHANCE * 100 : OTHERS_REACHED;
  return draw.percent(chance) ? somebody(draw, to, questions()) : nobody(draw, to);
}
