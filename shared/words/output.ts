import type { Zone } from "#shared/day/instant.ts";
import { printInstant } from "#shared/day/print-day.ts";
import type { LowDay } from "#shared/output/low-day.ts";
import type { ReadingProblem } from "#shared/output/measured-interval.ts";
import { type Microlitres, sum, toMl } from "#shared/output/microlitre.ts";
import type { DayRemark, IncompleteReason } from "#shared/output/net-day.ts";
import type { NetVolume } from "#shared/output/net-volume.ts";
import type { VolumeDoubt } from "#shared/output/plausible.ts";
import type { MlPer24h } from "#shared/output/rate.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** What raises an alarm and what does not, shown on every screen of output. */
const whatAlarms =
  "The clinic's rows raise an alarm from what is logged here. Silence raises none, and neither does a day that is not complete: read those yourself.";

/** The same of one tube: what nobody wrote down raises nothing either. */
export const whatAlarmsOf = ({ expectedFluid }: Pick<TubeState, "expectedFluid">): string =>
  expectedFluid.length > 0
    ? whatAlarms
    : `${whatAlarms} What it is expected to drain is not recorded, so no new fluid raises one: note it as a fact of the tube.`;

/** Why a day is not complete or its net cannot be told. */
export const incompleteWords = {
  "volume-unknown": "A volume of this day is unknown.",
  "flush-not-recorded": "Flush is ordered and nobody wrote down what was given: the net cannot be told.",
  "flush-withdrawn-not-recorded":
    "Flush was given and nobody wrote down what was drawn back: the net cannot be told.",
  overlap: "Two readings claim the same time: neither is added up until one is corrected.",
  "no-reading": "No reading covers this time. Missing is not zero.",
  gap: "Readings cover only part of this time.",
  "part-of-a-day": "Only part of a day: the tube was placed, changed or taken out on it.",
  "day-in-progress": "This day is not over.",
  "procedure-aspirate":
    "What was drawn off at the procedure falls on this day. It is told apart, not as output.",
} as const satisfies Record<IncompleteReason, string>;

/** What stands beside a day's figure. */
export const remarkWords = {
  "flush-does-not-come-back": "The flush does not come back: more went in than came out.",
  "leak-round-tube": "It leaks round the tube: some of the output is not in the figure.",
  estimated: "Partly estimated.",
  reported: "Told by someone, not seen.",
  "already-net": "Entered as net: no flush was subtracted.",
  "other-fluid-went-in": "Other fluid than flush went in. It is not subtracted.",
} as const satisfies Record<DayRemark, string>;

/** `17 mL`, `-10 mL`, `59.1 mL`: one decimal at most. */
export const printVolume = (volume: Microlitres): string => `${oneDecimal(toMl(volume))} mL`;

/** `48 mL/24 h`. */
export const printRate = (rate: MlPer24h): string => `${oneDecimal(rate)} mL/24 h`;

/** What one reading brings to its days: "Net 5 mL.", or why that cannot be told. */
export const netSentence = (net: NetVolume): string =>
  net.kind === "known"
    ? `Net ${printVolume(net.ul)}.`
    : net.because.map((reason) => incompleteWords[reason]).join(" ");

/** What the rows of a diary bring together: "6 emptyings, net 105 mL in all.", or how many of them cannot be told. */
export function diarySentence(nets: readonly NetVolume[]): string {
  const told = nets.filter((net) => net.kind === "known");
  const count = nets.length === 1 ? "One emptying" : `${nets.length} emptyings`;
  const untold = nets.length - told.length;
  if (untold > 0) return `${count}; of ${untold} the net cannot be told.`;
  return `${count}, net ${printVolume(sum(told.map(({ ul }) => ul)))} in all.`;
}

const oneDecimal = (value: number): number => Math.round(value * 10) / 10 + 0;

/** What is wrong with a set of readings, and what mends it. */
export function problemSentence(problem: ReadingProblem, zone: Zone): string {
  switch (problem.code) {
    case "no-start":
      return "This reading says since last emptying, and there is none before it. Type the time at which it began.";
    case "ends-in-future":
      return "This reading ends in the future and counts in no day. Correct its time.";
    case "overlap":
      return `Two readings claim the time from ${printInstant(problem.from, zone)} to ${printInstant(problem.to, zone)}. Correct one of them.`;
  }
}

/** A question, never a refusal: the entry stands as typed when the answer is yes. */
export function doubtSentence(doubt: VolumeDoubt): string {
  switch (doubt.code) {
    case "more-than-row":
      return `That is ${printRate(doubt.mlPer24h)}, over the clinic's row of ${printRate(doubt.rowMlPer24h)}. Is the volume right?`;
    case "far-over-median":
      return `That is ${printRate(doubt.mlPer24h)}; this week's median is ${printRate(doubt.medianMlPer24h)}. Is the volume right?`;
  }
}

/** Whether a day met the number for low output, in words that decide nothing. */
export function lowDayWords(low: LowDay): string {
  switch (low.kind) {
    case "low":
      return "Under the row for low output. This says nothing of patency, patient or imaging.";
    case "not low":
      return "Not under the row for low output.";
    case "cannot tell":
      return "Cannot tell whether this day was low.";
    case "does not apply":
      return low.because === "role"
        ? "Low output of this tube is no sign for removal."
        : "The tube is shut: it shows nothing, and means to.";
  }
}
