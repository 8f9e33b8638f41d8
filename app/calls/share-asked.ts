import type { Query } from "#app/lists/filter-address.ts";

const MOST_CALLERS = 20;

const counted = (word: Query[string]): number | null =>
  typeof word === "string" && /^\d{1,2}$/.test(word) && Number(word) >= 1 && Number(word) <= MOST_CALLERS
    ? Number(word)
    : null;

/** Which of how many callers an address asks for; all of the list for words that are none. */
export function shareAsked(query: Query): { readonly share: number; readonly of: number } {
  const [share, of] = [counted(query.share), counted(query.of)];
  return share === null || of === null || share > of ? { share: 1, of: 1 } : { share, of };
}
