import { type FilterTexts, filterNames } from "#shared/record/list-filter.ts";

/** What follows the question mark of an address, as the framework hands it on. */
export type Query = Readonly<Record<string, string | string[] | undefined>>;

const LONGEST_WORD = 200;

/** The filter that an address holds. A word given twice is both, which no list has: it is refused as one, not passed over. */
export function filterInQuery(query: Query): FilterTexts {
  const words = filterNames.map((name) => [name, [query[name] ?? []].flat().join(" ").trim()] as const);
  return Object.fromEntries(
    words.filter(([, word]) => word !== "").map(([name, word]) => [name, word.slice(0, LONGEST_WORD)]),
  );
}

/** A form sends every field, also those left blank; an address holds only what filters. */
export const hasBlanks = (query: Query): boolean =>
  filterNames.some((name) => [query[name] ?? []].flat().includes(""));

/** A list's address under a filter; `more` is what else it holds. */
export function listHref(
  path: string,
  filter: FilterTexts,
  more: Readonly<Record<string, string>> = {},
): string {
  const query = new URLSearchParams({ ...filter, ...more }).toString();
  return query === "" ? path : `${path}?${query}`;
}
