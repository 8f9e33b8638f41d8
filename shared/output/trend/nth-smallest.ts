/**
 * The value that would stand at `place`, counted from 0, if these were sorted; it reorders them (Hoare 1961, "Find"). 120 days have
 * 7,140 slopes, of which four are asked for: sorting them all takes more than twice as long.
 */
export function nthSmallest(values: Float64Array, place: number): number | undefined {
  if (place < 0 || place >= values.length) return undefined;
  const at = (index: number): number => values[index] ?? 0;
  let left = 0;
  let right = values.length - 1;
  while (left < right) {
    const pivot = at(place);
    let low = left;
    let high = right;
    while (low <= high) {
      while (at(low) < pivot) low += 1;
      while (at(high) > pivot) high -= 1;
      if (low > high) break;
      const moved = at(low);
      values[low] = at(high);
      values[high] = moved;
      low += 1;
      high -= 1;
    }
    if (high < place) left = low;
    if (low > place) right = high;
  }
  return values[place];
}
