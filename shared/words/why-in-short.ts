import type { Why } from "#shared/step/step.ts";
import { whySentence } from "#shared/words/why.ts";

/** Reasons that a line tells; the tube's own page tells all. */
const TOLD = 2;

/** The first reasons of a step, and how many more there are. */
export function whyInShort(why: readonly Why[]): string {
  const told = why.slice(0, TOLD).map(whySentence);
  const more = why.length - told.length;
  return [...told, ...(more > 0 ? [`And ${more} more.`] : [])].join(" ");
}
