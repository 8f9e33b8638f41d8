import type { EndWay, Figures, ReachWay } from "#shared/call/figures.ts";
import type { Day } from "#shared/day/day.ts";
import type { Instant } from "#shared/day/instant.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";

type Flag = { readonly raised: Instant; handed: Instant | null; done: Instant | null };
type Tube = { readonly kind: TubeKind; ended: { readonly how: EndWay; readonly on: Day } | null };

/** What a simulation counts of one patient as it goes, without the record: the figures are held against it. */
export type OwnCount = {
  readonly tubes: Map<string, Tube>;
  /** Attempts since somebody was last reached or a physician decided; `tried` counts letters and other people too. */
  attempts: number;
  tried: number;
  readonly rounds: { readonly on: Day; readonly way: ReachWay; readonly attempts: number }[];
  readonly flags: Map<string, Flag>;
};

export const nothingCounted = (): OwnCount => ({
  tubes: new Map(),
  attempts: 0,
  tried: 0,
  rounds: [],
  flags: new Map(),
});

const WAYS: readonly ReachWay[] = ["first attempt", "second attempt", "third attempt"];

/** Tries are over: somebody was reached at an attempt or another way, or a physician decided. */
export function roundOver(count: OwnCount, on: Day, how: "attempt" | "another way" | "not reached"): void {
  const way = how === "attempt" ? (WAYS[count.attempts - 1] ?? "later") : how;
  count.rounds.push({ on, way, attempts: count.attempts });
  count.attempts = 0;
  count.tried = 0;
}

const MS_AN_HOUR = 3_600_000;
const hours = (from: Instant, to: Instant): number => (to - from) / MS_AN_HOUR;

function middle(values: readonly number[]): number | null {
  const sorted = values.toSorted((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half];
  if (upper === undefined) return null;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? upper) + upper) / 2;
}

const inHours = (values: readonly number[]) => ({
  of: values.length,
  median: middle(values),
  most: values.length === 0 ? null : Math.max(...values),
});

function tally<K extends string>(names: readonly K[], found: readonly K[]): Record<K, number> {
  return Object.fromEntries(
    names.map((name) => [name, found.filter((one) => one === name).length]),
  ) as Record<K, number>;
}

const reachNames = [...WAYS, "later", "another way", "not reached"] as const;
const endNames: readonly EndWay[] = [
  "removed",
  "not replaced",
  "converted",
  "accepted elsewhere",
  "died",
  "follow-up ended",
];

function flagCount(flags: readonly Flag[]): Figures["flags"] {
  const done = flags.flatMap((flag) => (flag.done === null ? [] : [{ ...flag, done: flag.done }]));
  const open = flags.filter((flag) => flag.done === null);
  return {
    raised: flags.length,
    unhanded: open.filter(({ handed }) => handed === null).length,
    undone: open.filter(({ handed }) => handed !== null).length,
    toHanded: inHours(done.flatMap(({ raised, handed }) => (handed === null ? [] : [hours(raised, handed)]))),
    toDone: inHours(done.map((flag) => hours(flag.raised, flag.done))),
  };
}

/** The figures as a simulation counted them itself, over all that it did. */
export function figuresCounted(counts: readonly OwnCount[]): Figures {
  const tubes = counts.flatMap((count) => [...count.tubes.values()]);
  const standing = tubes.filter(({ ended }) => ended === null);
  const kinds = new Map<TubeKind, number>();
  for (const { kind } of standing) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
  const open = counts.filter((count) => [...count.tubes.values()].some(({ ended }) => ended === null));
  return {
    inPlace: [...kinds]
      .map(([kind, number]) => ({ kind, tubes: number }))
      .toSorted((a, b) => b.tubes - a.tubes || (a.kind < b.kind ? -1 : 1)),
    open: standing.length,
    reached: tally(
      reachNames,
      counts.flatMap(({ rounds }) => rounds.map(({ way }) => way)),
    ),
    trying: open.filter(({ tried }) => tried > 0).length,
    patients: open.length,
    flags: flagCount(counts.flatMap((count) => [...count.flags.values()])),
    ended: tally(
      endNames,
      tubes.flatMap(({ ended }) => (ended === null ? [] : [ended.how])),
    ),
  };
}
