import { servicesNamed } from "#db/queries/patients.ts";
import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { type FilterTexts, filterChoices, type ListFilter, readFilter } from "#shared/record/list-filter.ts";

/** A filter as a list answers it: what its fields hold and offer, what it asks for in words, and what is to mend in it. */
export type AskedFilter = {
  readonly texts: FilterTexts;
  readonly words: string | null;
  readonly refusals: readonly Refusal[];
  readonly choices: ReturnType<typeof filterChoices>;
};

/** Reads a filter beside the people and services of the clinic. `filter` is null where it was refused: then nothing is to be listed. */
export function askedFilter(
  db: Database,
  texts: FilterTexts,
): { readonly filter: ListFilter | null; readonly asked: AskedFilter } {
  const people = allStaff(db).filter(({ closedAt }) => closedAt === null);
  const beside = { people, services: servicesNamed(db) };
  const choices = filterChoices(beside);
  const reading = readFilter(texts, beside);
  if (!reading.ok) {
    return { filter: null, asked: { texts, words: null, refusals: reading.refusals, choices } };
  }
  const { filter, words } = reading;
  return { filter, asked: { texts: reading.texts, words, refusals: [], choices } };
}
