import type { ListLine } from "#app/lists/list-line.ts";
import { isDay } from "#shared/day/day.ts";

/** Where the next page goes on: after the step with these. */
export type Place = { readonly dueOn: ListLine["step"]["dueOn"]; readonly rank: number; readonly id: string };

const BASE64URL = /^[\w-]+$/;

/** A place as one word for an address. Holds ids and a day, nothing of a person. */
export const placeInAddress = ({ dueOn, rank, id }: Place): string =>
  Buffer.from(JSON.stringify([dueOn, rank, id])).toString("base64url");

/** The place that an address names; undefined, which is the first page, for a word that is none. */
export function placeFromAddress(word: string | undefined): Place | undefined {
  if (word === undefined || word.length > 600 || !BASE64URL.test(word)) return undefined;
  try {
    const read: unknown = JSON.parse(Buffer.from(word, "base64url").toString("utf8"));
    if (!Array.isArray(read)) return undefined;
    const [dueOn, rank, id] = read as unknown[];
    if (typeof dueOn !== "string" || !isDay(dueOn)) return undefined;
    return Number.isInteger(rank) && typeof id === "string" ? { dueOn, rank: rank as number, id } : undefined;
  } catch {
    return undefined;
  }
}
