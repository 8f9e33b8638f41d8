/** Lists of open steps by what is to be done about them, in the order in which they are read. Words of addresses. */
export const workLists = [
  "due",
  "overdue",
  "past-latest",
  "undated",
  "unconfirmed",
  "did-not-attend",
  "handed-over",
  "elsewhere",
  "prerequisites",
] as const;
export type WorkList = (typeof workLists)[number];

export const isWorkList = (word: string): word is WorkList => workLists.some((list) => list === word);

/** Every list of steps that a filter, a name of one's own and a file are kept for: those, and all that the clocks ask for. */
export const stepLists = [...workLists, "exchanges"] as const;
export type StepList = (typeof stepLists)[number];

/** Characters of the name under which somebody saves a filter. */
export const LONGEST_FILTER_NAME = 60;

/** To where in a person's own order a line is put: before all others, before or behind one of them, or back to the list's own order. */
export type OwnPlace =
  | { readonly at: "first" }
  | { readonly at: "before" | "behind"; readonly of: string }
  | { readonly at: "its own" };

/**
 * An order of one's own after a line was put somewhere. Putting it there again changes nothing; beside a line that is not in the order, it
 * stands behind all that are.
 */
export function placed(order: readonly string[], id: string, place: OwnPlace): readonly string[] {
  const others = order.filter((one) => one !== id);
  if (place.at === "its own") return others;
  if (place.at === "first") return [id, ...others];
  const beside = others.indexOf(place.of);
  const before = beside < 0 ? others.length : beside + (place.at === "behind" ? 1 : 0);
  return [...others.slice(0, before), id, ...others.slice(before)];
}
