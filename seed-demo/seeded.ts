/** Draws that look random and come out the same for the same seed. */
export type Draw = {
  /** A whole number from `least` to `most`, both included. */
  readonly between: (least: number, most: number) => number;
  /** True so many times in a hundred. */
  readonly percent: (chance: number) => boolean;
  readonly from: <T>(list: readonly T[]) => T;
  /** 22 letters and digits: scattered over an index as real ids are. */
  readonly id: () => string;
};

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789";

/** mulberry32: a public-domain generator of 32 bits, from memory. Good enough to scatter invented data. */
function fractions(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export function seeded(seed: number): Draw {
  const fraction = fractions(seed);
  const between = (least: number, most: number) => least + Math.floor(fraction() * (most - least + 1));
  const from = <T>(list: readonly T[]): T => list[between(0, list.length - 1)] as T;
  return {
    between,
    from,
    percent: (chance) => fraction() * 100 < chance,
    id: () => Array.from({ length: 22 }, () => LETTERS[between(0, LETTERS.length - 1)]).join(""),
  };
}
