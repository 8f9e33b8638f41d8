import { alarmAnswer } from "#shared/case/alarm-answer.ts";
import { callsAnswer } from "#shared/case/calls-answer.ts";
import type { CaseRecord, WorkedCase } from "#shared/case/case-schema.ts";
import { chainAnswer } from "#shared/case/chain-answer.ts";
import { criterionAnswer } from "#shared/case/criterion-answer.ts";
import { type Difference, differences } from "#shared/case/differences.ts";
import type { Json } from "#shared/case/json.ts";
import { lengthAnswer } from "#shared/case/length-answer.ts";
import { type CaseBooks, type Looking, lookAt } from "#shared/case/looking.ts";
import { outputAnswer } from "#shared/case/output-answer.ts";
import { passageAnswer } from "#shared/case/passage-answer.ts";
import { plannedAnswer } from "#shared/case/planned-answer.ts";
import { redFlagAnswer } from "#shared/case/red-flag-answer.ts";
import { slotsAnswer } from "#shared/case/slots-answer.ts";
import { stepsAnswer } from "#shared/case/steps-answer.ts";
import { type Telling, told } from "#shared/case/telling.ts";
import { trendAnswer } from "#shared/case/trend-answer.ts";
import { tubeAnswer } from "#shared/case/tube-answer.ts";
import { tubeOutAnswer } from "#shared/case/tube-out-answer.ts";
import { whichTube } from "#shared/case/which-tube.ts";
import { windowsAnswer } from "#shared/case/window-answer.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

/** What came of one case. `cannot run`: the case itself is to be mended first. */
export type CaseResult = Pick<WorkedCase, "name" | "compute" | "note"> &
  (
    | {
        readonly outcome: "agrees" | "differs";
        readonly differences: readonly Difference[];
        readonly got: Json;
      }
    | { readonly outcome: "cannot run"; readonly refusal: Refusal }
  );

type OfTube = CaseRecord & { readonly tube?: string | undefined };

function lookAtTube<T>(
  given: OfTube,
  books: CaseBooks,
  answer: (looking: Looking, tube: TubeState) => Telling<T>,
): Telling<T> {
  const looking = lookAt(given, books);
  if (looking.kind !== "told") return looking;
  const tube = whichTube(looking.value.state.tubes, given.tube);
  return tube.kind === "told" ? answer(looking.value, tube.value) : tube;
}

function answerOf({ compute, given }: WorkedCase, books: CaseBooks): Telling<Json> {
  switch (compute) {
    case "length":
      return lengthAnswer(given);
    case "tube-state":
      return lookAtTube(given, books, (looking, tube) => told(tubeAnswer(looking, tube)));
    case "open-steps": {
      const looking = lookAt(given, books);
      return looking.kind === "told" ? told(stepsAnswer(looking.value)) : looking;
    }
    case "passage":
      return lookAtTube(given, books, (looking, tube) => passageAnswer(given, looking, tube));
    case "chain":
      return chainAnswer(given, books);
    case "planned-exchange":
      return lookAtTube(given, books, (looking, tube) => plannedAnswer(given, looking, tube));
    case "alarm":
      return lookAtTube(given, books, (looking, tube) => told(alarmAnswer(looking, tube)));
    case "criterion":
      return lookAtTube(given, books, (looking, tube) => told(criterionAnswer(looking, tube, given.zone)));
    case "net-output":
    case "output-days":
      return lookAtTube(given, books, (looking, tube) => told(outputAnswer(looking, tube, given.zone)));
    case "slots":
      return told(slotsAnswer(given));
    case "window": {
      const looking = lookAt(given, books);
      return looking.kind === "told" ? told(windowsAnswer(given, looking.value)) : looking;
    }
    case "calls": {
      const looking = lookAt(given, books);
      return looking.kind === "told" ? told(callsAnswer(looking.value)) : looking;
    }
    case "tube-out":
      return lookAtTube(given, books, (looking, tube) => told(tubeOutAnswer(given, looking, tube)));
    case "red-flag": {
      const looking = lookAt(given, books);
      return looking.kind === "told" ? redFlagAnswer(given, looking.value) : looking;
    }
    case "trend":
      return lookAtTube(given, books, (looking, tube) => told(trendAnswer(looking, tube, given.zone)));
  }
}

/** A refusal is a result like another: its codes, the sentences shown, and which entry it stood in. */
const refusedAs = (entry: number | null, refusals: readonly Refusal[]): Json => ({
  refused: refusals.map(({ code }) => code),
  says: refusals.map(refusalSentence),
  entry,
});

/** Runs one case by the functions behind the screens, and holds what came out against what is expected. */
export function runCase(worked: WorkedCase, books: CaseBooks): CaseResult {
  const { name, compute, note, expect } = worked;
  const answer = answerOf(worked, books);
  if (answer.kind === "mistake")
    return { name, compute, note, outcome: "cannot run", refusal: answer.refusal };
  const got = answer.kind === "told" ? answer.value : refusedAs(answer.entry, answer.refusals);
  const found = differences(expect, got);
  return { name, compute, note, outcome: found.length === 0 ? "agrees" : "differs", differences: found, got };
}
