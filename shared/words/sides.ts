import type { Side } from "#shared/tube/vocabulary.ts";

/** What people type for a side; the first is the word that is shown. */
export const sideWords: readonly { readonly value: Side; readonly words: readonly string[] }[] = [
  { value: "left", words: ["left", "l", "lt", "left side", "left sided"] },
  { value: "right", words: ["right", "r", "rt", "right side", "right sided"] },
  { value: "midline", words: ["midline", "mid", "m", "middle"] },
  { value: "transplant", words: ["transplant", "tx", "txp", "t", "tx kidney", "transplant kidney"] },
  { value: "not sided", words: ["not sided", "no side", "none", "n/a", "not applicable"] },
];
