import type { Round } from "#shared/call/call-log.ts";
import type { At as FlagAt } from "#shared/call/red-flag.ts";
import type { Day } from "#shared/day/day.ts";
import type { Zone } from "#shared/day/instant.ts";
import { median } from "#shared/output/median.ts";
import { instantOf } from "#shared/output/segment-cuts.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";

/** A patient as the figures count: of an ended record only what it was and how it ended. */
export type Counted = Pick<PatientTubes, "calls" | "redFlags" | "flagsDone"> & {
  readonly tubes: readonly Pick<TubeState, "kind" | "status" | "ending">[];
};

/** From a day on, up to another and on it: of what is over, by when it was. What stands is counted as it stands. */
export type Span = { readonly from: Day; readonly to: Day };

/** Spans that are asked for, in days up to today. */
export const figureSpans = [30, 90, 365] as const;
export type FigureSpan = (typeof figureSpans)[number];

/** How somebody was reached, or that nobody was. */
export const reachWays = [
  "first attempt",
  "second attempt",
  "third attempt",
  "later",
  "another way",
  "not reached",
] as const;
export type ReachWay = (typeof reachWays)[number];

/** How a record ended. */
export const endWays = [
  "removed",
  "not replaced",
  "converted",
  "accepted elsewhere",
  "died",
  "follow-up ended",
] as const;
export type EndWay = (typeof endWays)[number];

type Count<K extends string> = Readonly<Record<K, number>>;
/** In hours; null where none of them is known. */
type Hours = { readonly of: number; readonly median: number | null; readonly most: number | null };

export type Figures = {
  readonly inPlace: readonly { readonly kind: TubeKind; readonly tubes: number }[];
  /** Records that have not ended. */
  readonly open: number;
  readonly reached: Count<ReachWay>;
  /** Patients whom nobody reached since a try, of those with an open record. */
  readonly trying: number;
  readonly patients: number;
  readonly flags: {
    readonly raised: number;
    /** Handed to nobody yet, and handed without a word of what was done. */
    readonly unhanded: number;
    readonly undone: number;
    readonly toHanded: Hours;
    readonly toDone: Hours;
  };
  readonly ended: Count<EndWay>;
};

const within = ({ from, to }: Span, day: Day): boolean => day >= from && day <= to;

function wayOf({ how, attempts }: Round): ReachWay {
  if (how !== "at an attempt") return how;
  return (["first attempt", "second attempt", "third attempt"] as const)[attempts - 1] ?? "later";
}

function counted<K extends string>(names: readonly K[], found: readonly K[]): Count<K> {
  const counts = Object.fromEntries(names.map((name) => [name, 0])) as Record<K, number>;
  for (const name of found) counts[name] += 1;
  return counts;
}

const MS_AN_HOUR = 3_600_000;

/** Hours from one moment to another; null where a clock time of one is not known. */
function hoursBetween(from: FlagAt, to: FlagAt | null, zone: Zone): number | null {
  if (to === null || from.time === null || to.time === null) return null;
  const [start, end] = [instantOf(from, zone), instantOf(to, zone)];
  return start === null || end === null ? null : (end - start) / MS_AN_HOUR;
}

function hoursOf(hours: readonly (number | null)[]): Hours {
  const known = hours.filter((one) => one !== null);
  if (known.length === 0) return { of: 0, median: null, most: null };
  return { of: known.length, median: median(known) ?? null, most: Math.max(...known) };
}

function endWay({ ending, status }: Counted["tubes"][number]): EndWay | null {
  if (status !== "ended" || ending === null) return null;
  return endWays.find((way) => way === ending.kind) ?? null;
}

function flagFigures(patients: readonly Counted[], span: Span, zone: Zone): Figures["flags"] {
  const open = patients.flatMap(({ redFlags }) => redFlags);
  const done = patients
    .flatMap(({ flagsDone }) => flagsDone)
    .filter(({ done: over }) => within(span, over.when.latest ?? over.recordedOn));
  return {
    raised: open.length + done.length,
    unhanded: open.filter(({ handed }) => handed === null).length,
    undone: open.filter(({ handed }) => handed !== null).length,
    toHanded: hoursOf(done.map(({ raised, handed }) => hoursBetween(raised, handed, zone))),
    toDone: hoursOf(done.map(({ raised, done: over }) => hoursBetween(raised, over, zone))),
  };
}

/** What a count can open: whoever is behind it. Words of an address. */
export const figureNames = [
  ...reachWays.map((way) => `reached ${way}` as const),
  ...endWays.map((way) => `ended ${way}` as const),
  "red flags",
  "trying",
] as const;
export type FigureName = (typeof figureNames)[number];

/** Days on which a patient counted in a figure, each once for each time; empty where they did not. */
export function daysBehind(patient: Counted, figure: FigureName, span: Span): readonly Day[] {
  const { calls, tubes, redFlags, flagsDone } = patient;
  const over = (moment: FlagAt): Day => moment.when.latest ?? moment.recordedOn;
  if (figure === "trying")
    return tubes.some(({ status }) => status !== "ended") ? calls.tries.slice(-1).map(over) : [];
  if (figure === "red flags")
    return [
      ...redFlags.map(over),
      ...flagsDone.filter(({ done }) => within(span, over(done))).map(({ done }) => over(done)),
    ];
  const rounds = calls.rounds.filter(({ on }) => within(span, on));
  const reached = rounds.filter((round) => figure === `reached ${wayOf(round)}`).map(({ on }) => on);
  const ended = tubes.flatMap((tube) => {
    const way = endWay(tube);
    const on = tube.ending === null ? null : (tube.ending.when.latest ?? tube.ending.recordedOn);
    return way !== null && on !== null && figure === `ended ${way}` && within(span, on) ? [on] : [];
  });
  return [...reached, ...ended];
}

/**
 * What the lead asks: what is in place, at which attempt people were reached and how many were not, how long a red flag waited for
 * somebody and for what was done, and how records ended. Counts of the clinic's own entries, nothing else. Pure; the order of patients
 * changes nothing.
 */
export function figuresOf(patients: readonly Counted[], span: Span, zone: Zone): Figures {
  const open = patients.filter(({ tubes }) => tubes.some(({ status }) => status !== "ended"));
  const tubes = patients.flatMap((patient) => patient.tubes);
  const standing = tubes.filter(({ status }) => status !== "ended");
  const kinds = [...new Set(standing.map(({ kind }) => kind))];
  const rounds = patients.flatMap(({ calls }) => calls.rounds).filter(({ on }) => within(span, on));
  const ways = tubes
    .filter(({ ending }) => ending !== null && within(span, ending.when.latest ?? ending.recordedOn))
    .map(endWay)
    .filter((way) => way !== null);
  return {
    inPlace: kinds
      .map((kind) => ({ kind, tubes: standing.filter((tube) => tube.kind === kind).length }))
      .toSorted((a, b) => b.tubes - a.tubes || (a.kind < b.kind ? -1 : 1)),
    open: standing.length,
    reached: counted(reachWays, rounds.map(wayOf)),
    trying: open.filter(({ calls }) => calls.tries.length > 0).length,
    patients: open.length,
    flags: flagFigures(patients, span, zone),
    ended: counted(endWays, ways),
  };
}
