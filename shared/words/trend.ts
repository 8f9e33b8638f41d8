import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { MlPer24h } from "#shared/output/rate.ts";
import type { CountableDays, LeftOutReason } from "#shared/output/trend/countable-days.ts";
import type { FallShape, WholeFall } from "#shared/output/trend/fall-shape.ts";
import type { HalfLife, NoHalfLifeReason } from "#shared/output/trend/half-life.ts";
import type { IfUnchanged, NoSpanReason } from "#shared/output/trend/if-unchanged.ts";
import { HORIZON_DAYS, LEAST_FOR_SHAPE, SILENT_DAYS, WIDEST_SPAN_DAYS } from "#shared/output/trend/limits.ts";
import type { MannKendall } from "#shared/output/trend/mann-kendall.ts";
import type { TheilSen } from "#shared/output/trend/theil-sen.ts";
import type { TrendOfTube } from "#shared/output/trend/trend-of-tube.ts";
import { incompleteWords, printRate, remarkWords } from "#shared/words/output.ts";

/** What is said, and how it was reckoned. */
export type Said = { readonly says: string; readonly sum: string };

/** Rates of a trend are plain numbers in mL/24 h. */
const rate = (value: number): string => printRate(value as MlPer24h);
const oneDecimal = (value: number): string => String(Math.round(value * 10) / 10 + 0);
const days = (count: number): string => `${count} ${count === 1 ? "day" : "days"}`;
const dayCount = (count: number): string => `${oneDecimal(count)} days`;

/** Said where a part needs more days than there are. */
const tooFew = "Cannot tell: too few days.";

/** "9 days, from Mon 2 Nov 2026 to Tue 10 Nov 2026." */
export function usedWords({ used }: CountableDays): string {
  const [first, last] = [used[0], used.at(-1)];
  if (first === undefined || last === undefined) return "No day can be counted on.";
  return used.length === 1
    ? `1 day, ${printDay(first.day)}.`
    : `${days(used.length)}, from ${printDay(first.day)} to ${printDay(last.day)}.`;
}

const leftOutWords = {
  ...incompleteWords,
  ...remarkWords,
  "earlier-segment": "Before the last change of size, mode, suction or position.",
} as const satisfies Record<LeftOutReason, string>;

/** Each reason once, with its days: "No reading covers this time. Missing is not zero. Wed 4 Nov 2026, Thu 5 Nov 2026." */
export function leftOutLines({ leftOut }: CountableDays): readonly string[] {
  const byReason = new Map<LeftOutReason, Day[]>();
  for (const { day, because } of leftOut)
    for (const reason of because) byReason.set(reason, [...(byReason.get(reason) ?? []), day]);
  return [...byReason].map(([reason, of]) => `${leftOutWords[reason]} ${whichDays(of)}`);
}

const NAMED = 4;

function whichDays(of: readonly Day[]): string {
  const [first, last] = [of[0], of.at(-1)];
  if (first === undefined || last === undefined) return "";
  return of.length <= NAMED
    ? `${of.map(printDay).join(", ")}.`
    : `${days(of.length)} from ${printDay(first)} to ${printDay(last)}.`;
}

/** A slope in words: "falls by 4 mL/24 h a day". */
function slopeWords(slope: number): string {
  if (slope === 0) return "neither rises nor falls";
  return `${slope < 0 ? "falls" : "rises"} by ${rate(Math.abs(slope))} a day`;
}

export function lineWords(line: TheilSen): Said {
  if (line.kind === "none") return { says: tooFew, sum: "" };
  const { slope, interval, level, slopes, variance, anchor } = line;
  const sum = `The median of ${slopes} slopes between two days each; the line goes through the medians, ${rate(anchor.y)} on day ${oneDecimal(anchor.x + 1)}.`;
  if (interval.kind === "none")
    return { says: `The net ${slopeWords(slope)}. No ${level.percent} % interval: too few days.`, sum };
  const { low, high, rank } = interval;
  return {
    says: `The net ${slopeWords(slope)}; ${level.percent} % interval ${rate(low)} to ${rate(high)} a day.`,
    sum: `${sum} The interval runs from slope ${rank} of ${slopes} to slope ${slopes - rank + 1}, by a variance of ${oneDecimal(variance)}.`,
  };
}

/** "2 of 100", "under 1 of 1,000". */
function oftenWords(p: number): string {
  if (p < 0.001) return "in under 1 of 1,000 series";
  return p < 0.1 ? `in ${Math.round(p * 1000)} of 1,000 series` : `in ${Math.round(p * 100)} of 100 series`;
}

const pWords = (p: number): string => (p < 0.0001 ? "p under 0.0001" : `p ${Math.round(p * 10000) / 10000}`);

export function kendallWords(told: MannKendall): Said {
  if (told.kind === "none") return { says: tooFew, sum: "" };
  const { s, n, pairs, variance, ties } = told;
  const alike = ties.length === 0 ? "" : `, ties of ${ties.join(", ")}`;
  const counted = `${pairs} pairs of ${days(n)}, rising less falling: S ${s}, variance ${oneDecimal(variance)}${alike}.`;
  const by =
    told.kind === "exact"
      ? "Two-sided, by the exact distribution of S."
      : `Z ${Math.round(told.z * 1000) / 1000}, two-sided, by the bell curve with correction for ties and continuity.`;
  return {
    says: `Without any trend, days would rise or fall as steadily as this ${oftenWords(told.p)} (${pWords(told.p)}).`,
    sum: `Mann-Kendall. ${counted} ${by}`,
  };
}

const noHalfLife = {
  "too-few-days": `None: under ${LEAST_FOR_SHAPE} days.`,
  "not-every-day-over-zero": "None: not every day is over 0 mL.",
  "interval-holds-zero": "None: the interval of the slope holds 0, so it may not fall at all.",
  rising: "None: it rises.",
} as const satisfies Record<NoHalfLifeReason, string>;

export function halfLifeWords(told: HalfLife): Said {
  if (told.kind === "none") return { says: noHalfLife[told.because], sum: "" };
  const { days: half, least, most, line } = told;
  return {
    says: `It halves in ${dayCount(half)}; ${line.level.percent} % interval ${oneDecimal(least)} to ${dayCount(most)}.`,
    sum: `The median line through the logarithms: ln 2 over ${Math.round(-line.slope * 1000) / 1000} a day.`,
  };
}

export function fallWords(fall: FallShape): Said {
  switch (fall.kind) {
    case "no fall":
      return { says: "No fall.", sum: "Not every day of the last third lies under every day of the first." };
    case "cannot tell":
      return fall.because === "too-few-days"
        ? { says: `Cannot tell: under ${LEAST_FOR_SHAPE} days.`, sum: "" }
        : {
            says: `Cannot tell whether sudden or gradual: days are missing between ${printDay(fall.largest.from)} and ${printDay(fall.largest.to)}, where it fell by ${rate(fall.largest.fall)}.`,
            sum: wholeFall(fall),
          };
    case "sudden":
      return {
        says: `Sudden: by ${rate(fall.largest.fall)} from ${printDay(fall.largest.from)} to ${printDay(fall.largest.to)}, of ${rate(fall.fall)} in all.`,
        sum: `${wholeFall(fall)} Half of that or more came from one day to the next, and no later day is over half way.`,
      };
    case "gradual":
      return {
        says: `Gradual: by ${rate(fall.fall)} in all.`,
        sum: `${wholeFall(fall)} Nowhere half of that came from one day to the next and stayed.`,
      };
  }
}

const wholeFall = ({ firstMedian, lastMedian, third }: WholeFall): string =>
  `Median of the first ${days(third)} ${rate(firstMedian)}, of the last ${days(third)} ${rate(lastMedian)}.`;

const noSpan = {
  "no-row": "No span: no row asks for low output of this tube.",
  "too-few-days": "No span: too few days for an interval.",
  "days-too-old": `No span: the last day used is over ${SILENT_DAYS} days old, or the line went under the row meanwhile.`,
  "already-under": "No span: the line is under the row already.",
  rising: "No span: it rises.",
  "interval-holds-zero": "No span: the interval of the slope holds 0, so it may not fall at all.",
  "too-wide": `No span: it would be wider than ${WIDEST_SPAN_DAYS} days.`,
  "too-far": `No span: it would end over ${HORIZON_DAYS} days after the last day.`,
} as const satisfies Record<NoSpanReason, string>;

export function ifUnchangedWords(told: IfUnchanged): Said {
  if (told.kind === "none") return { says: noSpan[told.because], sum: "" };
  return {
    says: `If unchanged, the median line goes under ${rate(told.lowNetMl)} between ${printDay(told.from)} and ${printDay(told.to)}.`,
    sum: "By the steepest and the flattest slope of the interval. A line drawn on, no forecast: it knows nothing of patency, patient or imaging.",
  };
}

const doesNotApply = {
  role: "Output is no measure of this tube: nothing is computed of it.",
  mode: "The tube is shut: it shows nothing, and means to. Nothing is computed of it.",
  sessions: "It is drained by session, not by day: nothing is computed by day.",
} as const;

/** Why there is nothing to tell; null where there is. */
export function noTrendWords(
  trend: { readonly kind: "told" } | Exclude<TrendOfTube, { kind: "told" }>,
): string | null {
  switch (trend.kind) {
    case "told":
      return null;
    case "no days":
      return "No day can be counted on yet.";
    case "does not apply":
      return doesNotApply[trend.because];
  }
}
