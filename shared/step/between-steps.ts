import { isOpen } from "#shared/day/clinic-days.ts";
import { addDays, type Day, later } from "#shared/day/day.ts";
import { dayAt, type Instant } from "#shared/day/instant.ts";
import { pinkToAskAgain } from "#shared/output/alarm/pink-urine.ts";
import { shutModes } from "#shared/output/low-day.ts";
import { instantOf } from "#shared/output/segment-cuts.ts";
import type { BalloonRow } from "#shared/protocol/fluid-rows.ts";
import { type Draft, exampleLines, firstWindow, single, type TubeQuestion, why } from "#shared/step/draft.ts";
import type { Why } from "#shared/step/step.ts";
import { trialTarget } from "#shared/step/trial-calls.ts";
import { known } from "#shared/tube/certainty.ts";
import { hasBalloon } from "#shared/tube/has-balloon.ts";
import type { Balloon, Trial, TubeState } from "#shared/tube/state.ts";

/** A trial that came out asks for a decision; one of which nobody knows when it began asks now. */
function trialOf({ tube }: TubeQuestion): Draft[] {
  const { trial } = tube;
  if (trial === null) {
    if (tube.mode !== "on a clamp trial") return [];
    return [single("clamp trial", tube.catheter.recordedOn, [why("trial-undated")])];
  }
  switch (trial.state) {
    case "running":
      return [];
    case "passed":
      return [single("review", trial.recordedOn, [why("trial-passed", {}, trial.eventId)])];
    case "failed":
      return [single("review", trial.recordedOn, [why("trial-failed", {}, trial.eventId)])];
  }
}

/** The next call of a trial that runs, counted in hours and not in working days: a closed day asks who covers it. */
function trialCall(question: TubeQuestion, trial: Trial): Draft {
  const { calendar, protocol } = question;
  const row = protocol.calls?.trialOn ?? null;
  const start = trial.since.precision === "day" ? trial.since.earliest : null;
  const target = trialTarget(question);
  if (row === null || start === null || target === null)
    return single("clamp trial", trial.recordedOn, [why("trial-undated", {}, trial.eventId)]);
  const days = row.days.toSorted((a, b) => a - b);
  const lines = [
    why("trial-running", { days: days.join(", "), day: start, source: row.source }, trial.eventId),
  ];
  if (!isOpen(target, calendar))
    lines.push(
      why("trial-closed-day", { day: target, covers: trial.covers, asks: row.closed }, trial.eventId),
    );
  const latest = addDays(start, days.at(-1) ?? 0);
  return { kind: "clamp trial", window: { earliest: null, target, latest }, why: lines };
}

export function trialDrafts(question: TubeQuestion): Draft[] {
  const { trial } = question.tube;
  return trial?.state === "running" ? [trialCall(question, trial)] : trialOf(question);
}

/** Whether somebody was reached by telephone after that time; a call without a clock time was made before everything of its day. */
function reachedAfter({ tube: { called }, zone }: TubeQuestion, time: Instant): boolean {
  const at = called?.reached === true ? instantOf(called, zone) : null;
  return at !== null && at > time;
}

/** A diary that was begun and stops: asked for so many days after the last volume, or after the last call that reached somebody. */
export function diaryDrafts({ tube, protocol, readings, zone }: TubeQuestion): Draft[] {
  const row = protocol.calls?.diaryMissing ?? null;
  const last = readings.reduce<Instant | null>((to, one) => (to === null || one.to > to ? one.to : to), null);
  if (row === null || last === null || shutModes.includes(tube.mode)) return [];
  const entered = dayAt(last, zone);
  const reached = tube.called?.reached === true ? tube.called.when.latest : null;
  const since = reached === null ? entered : later(entered, reached);
  const line = why("diary-missing", { day: entered, days: row.days, source: row.source });
  return [single("diary", addDays(since, row.days), [line])];
}

/** Pink urine soon after a procedure is asked about again the next day, closed or not, until its look is told or somebody was called. */
export function askAgainDrafts(question: TubeQuestion): Draft[] {
  const { protocol, age, zone } = question;
  const row = protocol.outputRows?.newFluid ?? null;
  const pink = row === null || age === "under 18" ? null : pinkToAskAgain(question);
  if (row === null || pink === null || reachedAfter(question, pink.to)) return [];
  const seen = dayAt(pink.to, zone);
  const line = why("pink-urine", { day: seen, hours: row.pinkUrineHours, source: row.source });
  return [single("ask again", addDays(seen, 1), [line, ...exampleLines(protocol)])];
}

function lossLines({ eventId, lossesMl }: Balloon, { lossOverMl }: BalloonRow): Why[] {
  const loss = lossesMl.at(-1) ?? null;
  if (loss === null) return [why("balloon-loss-unknown", {}, eventId)];
  return loss > lossOverMl ? [why("balloon-loss", { loss, over: lossOverMl }, eventId)] : [];
}

/** Water in the balloon: the first check in its window, then every so many days from the last. */
export function balloonDrafts({ tube, protocol: { balloon: row } }: TubeQuestion): Draft[] {
  const { balloon, catheter } = tube;
  if (row === null || !hasBalloon(tube)) return [];
  const { first, every, source } = row;
  const lines = [why("balloon-row", { from: first.from, to: first.to, every, source })];
  const last = balloon?.when.earliest ?? null;
  if (balloon !== null && last !== null) {
    const on = addDays(last, every);
    const checked = why("balloon-last-check", { day: last }, balloon.eventId);
    const window = { earliest: on, target: on, latest: null };
    return [{ kind: "balloon check", window, why: [...lines, checked, ...lossLines(balloon, row)] }];
  }
  if (balloon !== null) return [single("balloon check", balloon.recordedOn, lines)];
  return [{ kind: "balloon check", window: firstWindow(catheter, first), why: lines }];
}

/** From which day a position of the tip counts: it may have moved with every catheter and every reposition. */
function tipSince({ catheter, repositioned }: TubeState): Day {
  const start = catheter.since.earliest ?? catheter.recordedOn;
  const moved = repositioned === null ? start : (repositioned.when.earliest ?? repositioned.recordedOn);
  return later(start, moved);
}

/** The tip's own date, beside that of the catheter. A tip that is known not to be in place asks whatever the row says. */
export function tipDrafts({ tube, protocol }: TubeQuestion): Draft[] {
  const { tipConfirmed, kind } = tube;
  const seenIn = tipConfirmed === null ? undefined : known(tipConfirmed.inPlace);
  const eventId = tube.story.findLast((line) => line.kind === "tip position")?.eventId ?? null;
  if (tipConfirmed !== null && seenIn === false)
    return [
      single("tip position", tipConfirmed.when.latest ?? tube.catheter.recordedOn, [
        why("tip-not-in-place", {}, eventId),
      ]),
    ];
  const row = protocol.tips.find((tip) => tip.kind === kind);
  if (row === undefined) return [];
  const { within, again, source } = row;
  const asks = (since: Day, days: number): Draft =>
    single("tip position", addDays(since, days), [why("tip-to-confirm", { day: since, days, source })]);
  if (tipConfirmed === null || seenIn === undefined) return [asks(tipSince(tube), within)];
  const on = tipConfirmed.when.earliest;
  return again === null || on === null ? [] : [asks(on, again)];
}
