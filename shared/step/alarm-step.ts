import { type Day, earlier } from "#shared/day/day.ts";
import { alarmReasons } from "#shared/output/alarm/alarm-reasons.ts";
import type { AlarmReason } from "#shared/output/alarm/reason.ts";
import { shutModes } from "#shared/output/low-day.ts";
import { flagRaisedBy } from "#shared/protocol/find-flag.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import { answerableIn } from "#shared/step/answerable.ts";
import { type Draft, exampleLines, single, type TubeQuestion, why } from "#shared/step/draft.ts";
import type { Why } from "#shared/step/step.ts";
import type { Trouble } from "#shared/tube/state.ts";

type Reason = { readonly on: Day; readonly line: Why };

/** Any leak of a shut tube is a red flag of its own, where the leak by itself raises none. */
function flagOf({ tube, protocol }: TubeQuestion, trouble: Trouble): RedFlagRow | undefined {
  const ofShut = trouble.kind === "leaking" && shutModes.includes(tube.mode);
  return (
    flagRaisedBy(protocol, trouble) ??
    (ofShut ? protocol.redFlags.find(({ id }) => id === "trial with symptoms") : undefined)
  );
}

function troubleReason(question: TubeQuestion, trouble: Trouble): Reason {
  const flag = flagOf(question, trouble);
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

/** As the step quotes it: what was found, by which row, how soon, what holds until then, and what answering it names. */
function byRowOf({ code, on, key, at, eventId, ...reason }: AlarmReason): Reason {
  const { args, level, untilReached, source } = reason;
  const quoted = { ...args, level, untilReached, source, key, until: at };
  return { on, line: why(`alarm-${code}`, quoted, eventId ?? null) };
}

/** By the rows of the table for adults, which say nothing under 18. */
const readingReasons = ({ age, ...question }: TubeQuestion): Reason[] =>
  age === "under 18" ? [] : alarmReasons(question).map(byRowOf);

/** What stands beside reasons by row: the usual levels that were accepted, and that nobody has approved the rows. */
function beside({ tube, protocol }: TubeQuestion, found: readonly Reason[]): Why[] {
  if (found.length === 0) return [];
  const usual = tube.usual.map(({ row, mlPer24h, until, acceptedBy, eventId }) =>
    why("usual-level", { row, mlPer24h, day: until, acceptedBy }, eventId),
  );
  return [...usual, ...exampleLines(protocol)];
}

/** One alarm a tube, its reasons inside; due on the day on which the first of them was recorded or its row was met. */
export function alarmDrafts(question: TubeQuestion): Draft[] {
  const answered = new Set(question.tube.answered.map(({ key }) => key));
  const recorded = [
    ...question.tube.troubles.map((trouble) => troubleReason(question, trouble)),
    ...balloonReason(question),
  ].filter(({ line }) => answerableIn([line]).every(({ key }) => !answered.has(key)));
  const byRow = readingReasons(question);
  const [first, ...others] = [...recorded, ...byRow];
  if (first === undefined) return [];
  const on = others.reduce((day, reason) => earlier(day, reason.on), first.on);
  const lines = [first, ...others].map(({ line }) => line);
  return [single("alarm", on, [...lines, ...beside(question, byRow)])];
}
