import { callLineOf } from "#shared/call/call-line.ts";
import { questionsOf } from "#shared/call/questions.ts";
import type { Json } from "#shared/case/json.ts";
import type { Looking } from "#shared/case/looking.ts";
import { whyAnswer } from "#shared/case/steps-answer.ts";
import { betweenVisits, type OpenStep, ownerOn } from "#shared/step/step.ts";
import { triesText } from "#shared/words/tries.ts";

const ofCalls = ({ kind }: OpenStep): boolean => betweenVisits.includes(kind);

/** What is asked by telephone, in order of the steps; the patient's line in the list; what was tried; and which questions are asked of whom. */
export function callsAnswer({ state, steps, books, protocol, today }: Looking): Json {
  const line = callLineOf(state, steps, books);
  const asked = questionsOf(protocol.calls?.questions ?? [], state);
  return {
    next: steps.filter(ofCalls).map((step) => ({
      step: step.kind,
      tube: step.tubeId,
      due: step.dueOn,
      latest: step.latest,
      owner: ownerOn(step, today).role,
      why: whyAnswer(step.why),
    })),
    line:
      line === null
        ? null
        : {
            due: line.dueOn,
            latest: line.latest,
            attemptsLeft: line.attemptsLeft,
            inTrial: line.inTrial,
            redFlagPending: line.flagPending,
          },
    tried: triesText(state.calls),
    asks: asked.map(({ row, tube }) => (tube === null ? row.id : `${tube.id}: ${row.id}`)),
  };
}
