/** The value that so many of a hundred do not exceed (nearest rank). */
export function percentile(values: readonly number[], percent: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  const rank = Math.max(1, Math.ceil((percent / 100) * sorted.length));
  const value = sorted[rank - 1];
  if (value === undefined) throw new RangeError("nothing was measured");
  return value;
}

export const median = (values: readonly number[]): number => percentile(values, 50);

export function msOf(work: () => void): number {
  const began = performance.now();
  work();
  return performance.now() - began;
}

type Pair = { readonly ours: readonly number[]; readonly floor: readonly number[] };

/** Milliseconds of each run. The two run by turns, so that both meet the same machine; the first fifth warms up and is left out. */
export function byTurns(turns: number, ours: () => void, floor: () => void): Pair {
  const pairs = Array.from({ length: turns }, () => [msOf(ours), msOf(floor)] as const);
  const counted = pairs.slice(Math.floor(turns / 5));
  return { ours: counted.map(([ms]) => ms), floor: counted.map(([, ms]) => ms) };
}
