/** Most names that a sentence offers. */
const MOST_NAMES = 5;

/** Pairs of neighboring letters, which a slip of the finger leaves mostly as they were. */
function pairsOf(text: string): ReadonlySet<string> {
  const letters = ` ${text.toLowerCase()} `;
  return new Set(Array.from({ length: letters.length - 1 }, (_, at) => letters.slice(at, at + 2)));
}

/** Of 0, nothing in common, to 1, the same pairs. */
function likeness(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  const common = [...a].filter((pair) => b.has(pair)).length;
  return (2 * common) / (a.size + b.size);
}

/** The names most like what was typed, the likest first; the first few as they stand where nothing is alike. */
export function nearestNames(typed: string, names: readonly string[]): readonly string[] {
  const pairs = pairsOf(typed);
  return names
    .map((name) => ({ name, like: likeness(pairs, pairsOf(name)) }))
    .toSorted((a, b) => b.like - a.like)
    .slice(0, MOST_NAMES)
    .map(({ name }) => name);
}
