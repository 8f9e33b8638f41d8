import type { Json } from "#shared/case/json.ts";
import type { Looking } from "#shared/case/looking.ts";
import { named, whyAnswer } from "#shared/case/steps-answer.ts";
import { answerableIn } from "#shared/step/answerable.ts";
import { ownerOn } from "#shared/step/step.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** The one alarm of a tube: whether it stands, since when, whose it is, its reasons in their order, each with what it quotes. */
export function alarmAnswer({ steps, today }: Looking, tube: TubeState): Json {
  const alarm = steps.find(({ kind, tubeId }) => kind === "alarm" && tubeId === tube.id);
  const review = steps.some(({ kind, tubeId }) => kind === "review" && tubeId === tube.id);
  if (alarm === undefined) return { stands: false, reasons: [], review };
  const lines = answerableIn(alarm.why).map(({ line }) => line);
  return {
    stands: true,
    since: alarm.dueOn,
    owner: ownerOn(alarm, today).role,
    physicianOn: alarm.physicianOn,
    reasons: named(lines, ({ code }) => code).map(([name]) => name),
    why: whyAnswer(lines),
    review,
  };
}
