import type { Query } from "#app/lists/filter-address.ts";

const LAST = 1000;

/** The page of a list that an address names, counted from 1; the first for a word that is none. */
export function pageInQuery(query: Query, name = "page"): number {
  const word = query[name];
  const page = typeof word === "string" && /^\d{1,4}$/.test(word) ? Number(word) : 1;
  return page >= 1 && page <= LAST ? page : 1;
}
