/** Kendall's count over all pairs of values, with its variance if there were no trend. */
export type Kendall = {
  readonly n: number;
  /** n (n - 1) / 2. */
  readonly pairs: number;
  /** Pairs that rise less pairs that fall. */
  readonly s: number;
  /** How many values are alike, for each value that comes more than once. */
  readonly ties: readonly number[];
  readonly variance: number;
};

const spread = (count: number): number => count * (count - 1) * (2 * count + 5);

function tiesIn(values: readonly number[]): readonly number[] {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts.values()].filter((count) => count > 1);
}

/**
 * Of values in order of time. Var S = (n (n - 1) (2n + 5) - sum over ties of t (t - 1) (2t + 5)) / 18 (Kendall 1975; US EPA
 * QA/G-9S).
 */
export function kendall(values: readonly number[]): Kendall {
  const n = values.length;
  let s = 0;
  for (const [index, value] of values.entries())
    for (let later = index + 1; later < n; later += 1) s += Math.sign((values[later] ?? value) - value);
  const ties = tiesIn(values);
  const tied = ties.reduce((total, count) => total + spread(count), 0);
  return { n, pairs: (n * (n - 1)) / 2, s, ties, variance: (spread(n) - tied) / 18 };
}
