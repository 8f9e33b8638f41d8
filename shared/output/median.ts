/** The middle value, or the mean of the two middle ones; undefined of none. Changes nothing in the list that it is given. */
export function median<N extends number>(values: readonly N[]): N | undefined {
  const sorted = values.toSorted((a, b) => a - b);
  const low = sorted[Math.ceil(sorted.length / 2) - 1];
  const high = sorted[Math.floor(sorted.length / 2)];
  return low === undefined || high === undefined ? undefined : (((low + high) / 2) as N);
}
