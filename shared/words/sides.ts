import type { Side } from "#shared/tube/vocabulary.ts";

/** What people type for a side; the first is the word that is shown. */
export const sideWords: readonly { readonly value: Side; readonly words: readonly string[] }[] = [
  { value: "left", words: ["left", "l", "lt"] },
  { value: "right", words: ["right", "r", "rt"] },
  { value: "midline", words: ["midline", "mid", "m"] },
  { value: "transplant", words: ["transplant", "tx", "txp", "t"] },
  { value: "not sided", words: ["not sided", "no side", "none", "n/a"] },
];
