import type { DayWindow } from "#shared/day/clinic-days.ts";
import type { Day } from "#shared/day/day.ts";

/** The window of one tube of a visit. */
export type TubeWindow = { readonly tubeId: string; readonly window: DayWindow };

export type JointWindow = DayWindow & {
  /** Whose latest date it is: none of the others may pass it. Null where no tube has one. */
  readonly latestOf: string | null;
  /** Tubes that are done before their own earliest date, where one visit cannot keep both. */
  readonly early: readonly string[];
};

type End = readonly [tubeId: string, on: Day];

const endsOf = (tubes: readonly TubeWindow[], end: keyof DayWindow): End[] =>
  tubes.flatMap(({ tubeId, window }): End[] => {
    const on = window[end];
    return on === null ? [] : [[tubeId, on]];
  });

const firstOf = (ends: readonly End[]): End | undefined =>
  ends.toSorted(([a, x], [b, y]) => (x === y ? (a < b ? -1 : 1) : x < y ? -1 : 1))[0];

/**
 * One window for several tubes of one patient: not past the earlier latest date; from the later earliest date on, unless that lies past the
 * earlier latest: then the latest date counts and the tubes that are done early are named. The target is the earlier one, brought inside.
 */
export function jointWindow(tubes: readonly TubeWindow[]): JointWindow {
  const [latestOf = null, latest = null] = firstOf(endsOf(tubes, "latest")) ?? [];
  const within = (on: Day): boolean => latest === null || on <= latest;
  const earliests = endsOf(tubes, "earliest");
  const kept = earliests.filter(([, on]) => within(on)).map(([, on]) => on);
  const early = earliests.filter(([, on]) => !within(on)).map(([tubeId]) => tubeId);
  const earliest = kept.toSorted().at(-1) ?? null;
  const [, asked = null] = firstOf(endsOf(tubes, "target")) ?? [];
  const late = asked !== null && latest !== null && asked > latest ? latest : asked;
  const target = late !== null && earliest !== null && late < earliest ? earliest : late;
  return { earliest, target, latest, latestOf, early };
}
