import type { ReactNode } from "react";
import { listHref } from "#app/lists/filter-address.ts";
import { ownListHref } from "#app/lists/list-href.ts";
import type { AskedFilter, SavedFilter } from "#app/lists/list-line.ts";
import { SaveFilter } from "#app/lists/save-filter.tsx";
import { SavedFilters } from "#app/lists/saved-filters.tsx";
import type { StepList } from "#shared/step/work-list.ts";
import styles from "./work-list.module.css";

type OwnFiltersProps = {
  readonly list: StepList;
  readonly asked: AskedFilter;
  readonly saved: readonly SavedFilter[];
};

/** What somebody saved of a list, and the way to save what is in force, where it is not saved already. */
export function OwnFilters({ list, asked, saved }: OwnFiltersProps): ReactNode {
  const { words, texts } = asked;
  const hrefOf = (filter: SavedFilter["filter"]) => listHref(ownListHref(list), filter);
  const isKept = saved.some(({ filter }) => hrefOf(filter) === hrefOf(texts));
  if (saved.length === 0 && words === null) return null;
  return (
    <div className={styles.filters} data-screen-only>
      {saved.length > 0 && (
        <SavedFilters saved={saved.map((one) => ({ ...one, href: hrefOf(one.filter) }))} />
      )}
      {words !== null && !isKept && <SaveFilter list={list} filter={texts} words={words} />}
    </div>
  );
}
