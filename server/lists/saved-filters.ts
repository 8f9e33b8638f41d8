import { addSavedFilter, dropSavedFilter, savedFiltersOf } from "#db/queries/own-lists.ts";
import { inTransaction } from "#db/transaction.ts";
import { machineNow } from "#server/clock.ts";
import { newId } from "#server/ids.ts";
import { askedFilter } from "#server/lists/asked-filter.ts";
import type { Doing } from "#server/record/record-event.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { filledField } from "#shared/record/field/text-field.ts";
import type { FilterTexts } from "#shared/record/list-filter.ts";
import { searchWord } from "#shared/record/patient/search-text.ts";
import { LONGEST_FILTER_NAME, type StepList } from "#shared/step/work-list.ts";
import { listName } from "#shared/words/work-lists.ts";

export type SavingFilter = {
  readonly list: StepList;
  readonly name: string;
  readonly filter: FilterTexts;
};

const { read: readName } = filledField({ label: "Name" }, "a name for the filter", LONGEST_FILTER_NAME);

/** Names that differ in capitals, blanks and signs alone are one; one of signs alone is itself. */
const keyOf = (name: string): string => searchWord(name) || name;

const refused = (code: "filter-shows-all" | "filter-name-taken", args = {}) =>
  new DomainError({ code, field: "name", args });

/**
 * Keeps a filter of a list under a name of that person's own. The same filter saved again under its name is kept once. Throws what the
 * filter and the name are refused for, `filter-shows-all`, and `filter-name-taken` where another filter has the name.
 */
export function saveFilter(
  { db, staff }: Doing,
  { list, name: typed, filter }: SavingFilter,
): { id: string } {
  const { asked } = askedFilter(db, filter);
  if (asked.refusals.length > 0) throw new DomainError(asked.refusals);
  if (asked.words === null) throw refused("filter-shows-all");
  const name = readName(typed);
  if (!name.ok) throw new DomainError({ ...name.refusal, field: "name" });
  const nameKey = keyOf(name.value);
  return inTransaction(db, (tx) => {
    const known = savedFiltersOf(tx, staff.id).find((row) => row.nameKey === nameKey);
    if (known === undefined) {
      const id = newId();
      const row = { id, staffId: staff.id, list, name: name.value, nameKey, filter: asked.texts };
      addSavedFilter(tx, { ...row, savedAt: machineNow() });
      return { id };
    }
    const isSame = known.list === list && JSON.stringify(known.filter) === JSON.stringify(asked.texts);
    if (!isSame) throw refused("filter-name-taken", { name: known.name, list: listName(known.list) });
    return { id: known.id };
  });
}

/** Forgets one of that person's filters; one that is gone already stays gone. */
export function dropFilter({ db, staff }: Doing, { id }: { readonly id: string }): { id: string } {
  inTransaction(db, (tx) => dropSavedFilter(tx, { staffId: staff.id, id }));
  return { id };
}
