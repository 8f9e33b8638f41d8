import { addDays, type Day } from "#shared/day/day.ts";
import { dayAt, endOfDay, type Instant, type Zone } from "#shared/day/instant.ts";
import { type Change, dayMoment, type Side, sideOfAll } from "#shared/output/criterion/changes.ts";
import type { DayFault } from "#shared/output/criterion/criterion.ts";
import type { CoveredDay } from "#shared/output/criterion/plateau.ts";
import { lowFigure, voidsLow } from "#shared/output/low-day.ts";
import { sum, toMl } from "#shared/output/microlitre.ts";
import { type DayNet, type NetDay, unknownDayReasons } from "#shared/output/net-day.ts";
import type { MlPer24h } from "#shared/output/rate.ts";

/** The net days of each tube that is looked at, in order. */
export type DaysOfTubes = readonly (readonly NetDay[])[];

export type JudgedDay = {
  readonly day: Day;
  readonly side: Side;
  readonly state: "low" | "not low" | "cannot tell";
  /** True where every hour of it was measured, with whatever is to be said of the figure. */
  readonly complete: boolean;
  readonly mlPer24h: number | null;
  readonly faults: readonly DayFault[];
  readonly readings: readonly string[];
};

type Sum = Pick<NetDay, "complete" | "net" | "because" | "remarks" | "readings">;

const unique = <T>(values: readonly T[]): readonly T[] => [...new Set(values)];

function summedNet(parts: readonly NetDay[]): DayNet {
  const known = parts.flatMap(({ net }) => (net.kind === "known" ? [net] : []));
  if (known.length < parts.length) return { kind: "missing" };
  const mlPer24h = known.reduce((total, net) => total + net.mlPer24h, 0) as MlPer24h;
  return { kind: "known", ul: sum(known.map(({ ul }) => ul)), mlPer24h };
}

/** One day of several tubes as one: complete only where it is for each of them. */
function summed(parts: readonly (readonly NetDay[])[]): Sum {
  const whole = parts.flatMap((ofTube) => ofTube.filter((part) => part.whole));
  const all = parts.flat();
  const missing = parts.some((ofTube) => ofTube.length === 0) ? (["no-reading"] as const) : [];
  return {
    complete: whole.length === parts.length && whole.every(({ complete }) => complete),
    net: whole.length === parts.length ? summedNet(whole) : { kind: "missing" },
    because: unique([...all.flatMap(({ because }) => because), ...missing]),
    remarks: unique(all.flatMap(({ remarks }) => remarks)),
    readings: unique(all.flatMap(({ readings }) => readings)),
  };
}

export type DaysInCavity = {
  readonly days: DaysOfTubes;
  readonly changes: readonly Change[];
  readonly zone: Zone;
  readonly now: Instant;
};

export type Judging = DaysInCavity & { readonly underMl: number };

const summedOn = (day: Day, { days }: DaysInCavity): Sum =>
  summed(days.map((ofTube) => ofTube.filter((part) => part.day === day)));

const sideOfDay = (day: Day, { changes, zone }: DaysInCavity): Side =>
  sideOfAll(changes, dayMoment(day, zone), zone);

function judged(day: Day, judging: Judging): JudgedDay {
  const figure = summedOn(day, judging);
  const low = lowFigure(figure, judging.underMl);
  return {
    day,
    side: sideOfDay(day, judging),
    state: low.kind,
    complete: figure.complete,
    mlPer24h: figure.net.kind === "known" ? figure.net.mlPer24h : null,
    faults: low.kind === "cannot tell" ? low.because : [],
    readings: figure.readings,
  };
}

/**
 * Ended days of the clinic, the newest first: as many as are to run, and on to the last complete one with as many before it. Nothing is
 * looked for before the first day that was measured.
 */
export function judgedDays(judging: Judging, running: number): readonly JudgedDay[] {
  const { days, zone, now } = judging;
  const first = days.flatMap((ofTube) => ofTube.slice(0, 1).map(({ day }) => day)).toSorted()[0];
  const found: JudgedDay[] = [];
  let left = running;
  for (let day = addDays(dayAt(now, zone), -1); left > 0; day = addDays(day, -1)) {
    const one = judged(day, judging);
    found.push(one);
    const reached = found.some(({ complete }) => complete) || first === undefined || day < first;
    if (reached) left -= 1;
  }
  return found;
}

/** Complete days since the last change, the newest first, with the readings of the tube that is looked at: the first of them. */
export function* coveredDays(cavity: DaysInCavity): Generator<CoveredDay> {
  const own = (cavity.days[0] ?? []).filter(({ complete }) => complete);
  for (const { day, readings } of own.toReversed()) {
    if (sideOfDay(day, cavity) === "before or mixed") return;
    const { complete, net } = summedOn(day, cavity);
    if (complete && net.kind === "known") yield { day, mlPer24h: net.mlPer24h, readings };
  }
}

/** What was written down of a time after the last complete day. */
export type LaterPart = { readonly day: Day; readonly ml: number; readonly faults: readonly DayFault[] };

const unknownFaults: readonly DayFault[] = [...unknownDayReasons, ...voidsLow];

/** What ran after a day had ended, by clinic day, with what keeps its figure from being known. Nothing written down is no fault here. */
export function partsAfter({ days, zone }: Judging, last: Day): readonly LaterPart[] {
  const ended = endOfDay(last, zone);
  const later = days.flatMap((ofTube) =>
    ofTube.filter(({ from, readings }) => from >= ended && readings.length > 0),
  );
  return unique(later.map(({ day }) => day)).map((day) => {
    const parts = later.filter((part) => part.day === day);
    const known = parts.flatMap(({ net }) => (net.kind === "known" ? [net.ul] : []));
    const faults = parts.flatMap(({ because, remarks }) => [...because, ...remarks]);
    return {
      day,
      ml: toMl(sum(known)),
      faults: unique(faults.filter((fault) => unknownFaults.includes(fault))),
    };
  });
}
