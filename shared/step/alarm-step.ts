import { type Day, earlier } from "#shared/day/day.ts";
import { flagRaisedBy } from "#shared/protocol/find-flag.ts";
import { type Draft, single, type TubeQuestion, why } from "#shared/step/draft.ts";
import type { Why } from "#shared/step/step.ts";
import type { Trouble } from "#shared/tube/state.ts";

type Reason = { readonly on: Day; readonly line: Why };

function troubleReason({ protocol }: TubeQuestion, trouble: Trouble): Reason {
  const flag = flagRaisedBy(protocol, trouble);
  const args = {
    trouble: trouble.kind,
    level: flag?.level ?? null,
    untilReached: flag?.untilReached ?? null,
  };
  return { on: trouble.recordedOn, line: why("trouble", args, trouble.eventId) };
}

/** So many losses of water in a row as the row makes an alarm of. */
function balloonReason({ tube, protocol: { balloon: row } }: TubeQuestion): Reason[] {
  const { balloon } = tube;
  if (row === null || balloon === null || balloon.lossesMl.length < row.alarmAfter) return [];
  const last = balloon.lossesMl.slice(-row.alarmAfter);
  if (!last.every((loss) => loss !== null && loss > row.lossOverMl)) return [];
  const args = { losses: last.join(", "), over: row.lossOverMl, source: row.source };
  return [{ on: balloon.recordedOn, line: why("balloon-losses", args, balloon.eventId) }];
}

/** One alarm a tube, its reasons inside; due on the day on which the first of them was recorded. */
export function alarmDrafts(question: TubeQuestion): Draft[] {
  const reasons = [
    ...question.tube.troubles.map((trouble) => troubleReason(question, trouble)),
    ...balloonReason(question),
  ];
  const [first, ...others] = reasons;
  if (first === undefined) return [];
  const on = others.reduce((day, reason) => earlier(day, reason.on), first.on);
  return [
    single(
      "alarm",
      on,
      reasons.map(({ line }) => line),
    ),
  ];
}
