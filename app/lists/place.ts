import { type Day, isDay } from "#shared/day/day.ts";

/** Where the next page of the list goes on: after the step with these. */
export type Place = { readonly dueOn: Day; readonly id: string };

const LONGEST_ID = 200;

/** A place as one word for an address. Holds a day and an id, nothing of a person. */
export const placeInAddress = ({ dueOn, id }: Place): string =>
  Buffer.from(`${dueOn} ${id}`).toString("base64url");

/** The place that an address names; undefined, which is the first page, for a word that is none. */
export function placeFromAddress(word: string | undefined): Place | undefined {
  if (word === undefined) return undefined;
  const text = Buffer.from(word, "base64url").toString("utf8");
  const dueOn = text.slice(0, 10);
  const id = text.slice(11);
  return isDay(dueOn) && id !== "" && id.length <= LONGEST_ID ? { dueOn, id } : undefined;
}
