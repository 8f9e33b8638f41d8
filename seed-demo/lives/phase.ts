import type { Draw } from "#seed-demo/seeded.ts";
import type { Day } from "#shared/day/day.ts";
import { kindOf, type TubeKind } from "#shared/tube/kind/kinds.ts";

/** What an invented life is drawn from. */
export type Chance = { readonly startDay: Day; readonly draw: Draw };

/** Where a catheter stands between its dates on the start day. `fresh`: its first call is still to come. */
export type Phase = "fresh" | "young" | "open" | "due" | "late";

/** Days of the kind's own row; what it does not say comes from what it says. */
export function daysOf(kind: TubeKind): {
  readonly earliest: number;
  readonly target: number;
  readonly latest: number;
} {
  const [row] = kindOf(kind).rows;
  const target = row?.target ?? row?.latest ?? 0;
  return { earliest: row?.earliest ?? target, target, latest: row?.latest ?? target };
}

/** A catheter's age in that phase. A weekend may add two days, which the bounds leave room for. */
export function ageIn(phase: Phase, kind: TubeKind, draw: Draw): number {
  const { earliest, target, latest } = daysOf(kind);
  switch (phase) {
    case "fresh":
      return 1;
    case "young":
      return draw.between(6, Math.max(6, earliest - 4));
    case "open":
      return draw.between(earliest, Math.max(earliest, target - 5));
    case "due":
      return draw.between(target, Math.min(target + 4, latest - 4));
    case "late":
      return latest + draw.between(1, 5);
  }
}
