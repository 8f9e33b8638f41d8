import { type Evidence, type FullDay, isShut } from "#shared/output/alarm/evidence.ts";

/** So many of the last days are still over the row, by the clinic's rows. `on`: the last of them. */
export type Plateau = {
  readonly on: FullDay["day"];
  readonly found: number;
  readonly days: number;
  readonly ofLast: number;
  readonly overMlPer24h: number;
  readonly source: string;
};

/**
 * A collection that goes on draining: a reason to look at it, and no alarm. Nobody is needed within the day, and a program that cries is
 * switched off. Null where it is not so, or cannot be told from complete days.
 */
export function plateauOf(evidence: Evidence, days: readonly FullDay[]): Plateau | null {
  const row = evidence.rows.plateau;
  if (row === null || evidence.tube.role !== "collection" || isShut(evidence)) return null;
  const last = days.slice(-row.ofLast);
  const on = last.at(-1)?.day;
  const found = last.filter(({ mlPer24h }) => mlPer24h > row.overMlPer24h).length;
  if (on === undefined || found < row.days) return null;
  const { days: needed, ofLast, overMlPer24h, source } = row;
  return { on, found, days: needed, ofLast, overMlPer24h, source };
}
