import type { Day } from "#shared/day/day.ts";
import type { OutputRows } from "#shared/protocol/output-rows.ts";

/** A covered day: complete, with its net in mL/24 h, and the tube's own readings of it by id. */
export type CoveredDay = {
  readonly day: Day;
  readonly mlPer24h: number;
  readonly readings: readonly string[];
};

/** A collection that goes on draining, by the clinic's row: so many of the last covered days are over it. */
export type Plateau = {
  /** The first and the last of the covered days that are looked at, and how many they are. */
  readonly from: Day;
  readonly to: Day;
  readonly covered: number;
  /** How many of them are over the row. */
  readonly over: number;
  /** The day with which the row was met, as it has been since, and its readings. */
  readonly since: Day;
  readonly readings: readonly string[];
  /** The row. */
  readonly overMl: number;
  readonly days: number;
  readonly ofLast: number;
  readonly source: string;
};

/**
 * Whether so many of the last covered days are over the row, not at it; null where not. A day that was not covered is none of them. Takes
 * no more days than it needs: usually as many as the row speaks of.
 */
export function plateauOf(
  newestFirst: Iterable<CoveredDay>,
  row: NonNullable<OutputRows["plateau"]>,
): Plateau | null {
  const { overMlPer24h: overMl, days, ofLast, source } = row;
  const coming = newestFirst[Symbol.iterator]();
  const taken: CoveredDay[] = [];
  const lastOnes = (end: number): readonly CoveredDay[] => {
    while (taken.length < end + ofLast) {
      const next = coming.next();
      if (next.done === true) break;
      taken.push(next.value);
    }
    return taken.slice(end, end + ofLast);
  };
  const overIn = (ones: readonly CoveredDay[]): number =>
    ones.filter(({ mlPer24h }) => mlPer24h > overMl).length;
  const looked = lastOnes(0);
  let met = 0;
  while (overIn(lastOnes(met)) >= days) met += 1;
  const [to, from, since] = [looked[0], looked.at(-1), taken[met - 1]];
  if (to === undefined || from === undefined || since === undefined) return null;
  return {
    from: from.day,
    to: to.day,
    covered: looked.length,
    over: overIn(looked),
    since: since.day,
    readings: since.readings,
    overMl,
    days,
    ofLast,
    source,
  };
}
