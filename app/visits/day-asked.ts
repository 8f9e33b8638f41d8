import type { Query } from "#app/lists/filter-address.ts";
import type { Day } from "#shared/day/day.ts";
import { readDay } from "#shared/day/read-day.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

/** The day that an address names, as a day is typed anywhere; today, with what to mend, where it names none. */
export type DayAsked = { readonly on: Day; readonly typed: string; readonly problem: string | null };

export function dayAsked({ on }: Query, today: Day): DayAsked {
  const typed = [on ?? []].flat().join(" ").trim();
  if (typed === "") return { on: today, typed, problem: null };
  const read = readDay(typed, { today, direction: "future" });
  if (read.ok) return { on: read.value, typed, problem: null };
  return { on: today, typed, problem: refusalSentence(read.refusal) };
}
