import type { Metadata } from "next";
import { redirect } from "next/navigation";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { filterInQuery, hasBlanks, listHref, type Query } from "#app/lists/filter-address.ts";
import { FilterLine } from "#app/lists/filter-line.tsx";
import { ownListHref } from "#app/lists/list-href.ts";
import type { AllListsPage } from "#app/lists/list-line.ts";
import { SavedFilters } from "#app/lists/saved-filters.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { listName, workListWords } from "#shared/words/work-lists.ts";
import styles from "./work-list.module.css";

export const metadata: Metadata = { title: "Lists - Dwellbook" };

const PATH = "/lists";

/** What is to be done, by what keeps it from being done: each list with how many stand in it. */
export default async function ListsPage({
  searchParams,
}: {
  readonly searchParams: Promise<Query>;
}): Promise<ReactNode> {
  const { api, frame } = await signedIn();
  const query = await searchParams;
  const filter = filterInQuery(query);
  if (hasBlanks(query)) redirect(listHref(PATH, filter));
  const { asked, lists, saved } = await api.list.all({ filter });
  return (
    <PageFrame
      frame={frame}
      heading="Which list?"
      lede={asked.words ?? "Steps counted as they stand today"}
      here="Exchanges"
    >
      <FilterLine path={PATH} asked={asked} />
      {asked.refusals.length === 0 && <Lists asked={asked} lists={lists} />}
      {saved.length > 0 && (
        <section className={styles.own}>
          <h2>Your saved filters</h2>
          <SavedFilters
            saved={saved.map((one) => ({
              ...one,
              name: `${one.name}, of ${listName(one.list)}`,
              href: listHref(ownListHref(one.list), one.filter),
            }))}
          />
        </section>
      )}
      <p data-screen-only>
        <a href={listHref("/exchanges", asked.texts)}>To Exchanges: every tube by what comes next</a>
      </p>
    </PageFrame>
  );
}

type ListsProps = Pick<AllListsPage, "asked" | "lists">;

const Lists = ({ asked, lists }: ListsProps): ReactNode => (
  <DataTable
    caption="Lists"
    columns={[
      {
        head: "List",
        cell: ({ list }) => <a href={listHref(ownListHref(list), asked.texts)}>{listName(list)}</a>,
      },
      { head: "How many", figure: true, cell: ({ count }) => count },
      { head: "What stands in it", cell: ({ list }) => workListWords[list].says },
    ]}
    rows={lists}
    keyOf={({ list }) => list}
    none=""
  />
);
