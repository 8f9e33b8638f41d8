import type { Json } from "#shared/case/json.ts";
import type { Looking } from "#shared/case/looking.ts";
import type { Zone } from "#shared/day/instant.ts";
import { lowRowOf } from "#shared/output/low-row.ts";
import { outputOfTube } from "#shared/output/output-of-tube.ts";
import type { CountableDays } from "#shared/output/trend/countable-days.ts";
import type { FallShape } from "#shared/output/trend/fall-shape.ts";
import type { HalfLife } from "#shared/output/trend/half-life.ts";
import type { MannKendall } from "#shared/output/trend/mann-kendall.ts";
import type { TheilSen } from "#shared/output/trend/theil-sen.ts";
import { trendOfTube } from "#shared/output/trend/trend-of-tube.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** Four digits after the point: what a person checks by hand. */
const rounded = (value: number): number => Math.round(value * 1e4) / 1e4 + 0;

/** A day left out twice, as two parts, stands with the reasons of both. */
function daysAnswer({ used, leftOut }: CountableDays) {
  const reasons = new Map<string, string[]>();
  for (const { day, because } of leftOut) reasons.set(day, [...(reasons.get(day) ?? []), ...because]);
  return { used: used.map(({ day }) => day), leftOut: Object.fromEntries(reasons) };
}

function lineAnswer(line: TheilSen): Json {
  if (line.kind === "none") return line;
  const { slope, interval, anchor, slopes, variance, level } = line;
  return {
    slope: rounded(slope),
    interval: interval.kind === "none" ? interval.because : [interval.low, interval.high].map(rounded),
    level: level.percent,
    rank: interval.kind === "none" ? null : interval.rank,
    slopes,
    variance: rounded(variance),
    throughDay: rounded(anchor.x),
    throughNet: rounded(anchor.y),
  };
}

function kendallAnswer(told: MannKendall): Json {
  if (told.kind === "none") return told;
  const { kind, s, pairs, ties, variance, p } = told;
  const counted = { kind, s, pairs, ties, variance: rounded(variance), p: rounded(p) };
  return kind === "exact" ? counted : { ...counted, z: rounded(told.z) };
}

const halfLifeAnswer = (told: HalfLife): Json =>
  told.kind === "none"
    ? told
    : { days: rounded(told.days), least: rounded(told.least), most: rounded(told.most) };

function fallAnswer(fall: FallShape): Json {
  if (fall.kind === "no fall" || (fall.kind === "cannot tell" && fall.because === "too-few-days"))
    return fall;
  return { ...fall, fall: rounded(fall.fall) };
}

/** What stands behind a tube's output, as its output page tells it, and the physician's span. */
export function trendAnswer({ readings, now, protocol }: Looking, tube: TubeState, zone: Zone): Json {
  const own = readings.filter(({ tubeId }) => tubeId === tube.id);
  const { days } = outputOfTube(tube, { readings: own, zone, row: protocol.output, now });
  const trend = trendOfTube(days, { role: tube.role, mode: tube.mode, row: lowRowOf(tube.kind, protocol) });
  switch (trend.kind) {
    case "does not apply":
      return { kind: trend.kind, because: trend.because };
    case "no days":
      return { kind: trend.kind, ...daysAnswer(trend.days) };
    case "told":
      return {
        kind: trend.kind,
        ...daysAnswer(trend.days),
        median: rounded(trend.median),
        line: lineAnswer(trend.line),
        kendall: kendallAnswer(trend.kendall),
        halfLife: halfLifeAnswer(trend.halfLife),
        fall: fallAnswer(trend.fall),
        ifUnchanged: trend.ifUnchanged,
      };
  }
}
