import type { Metadata } from "next";
import { notFound, redirect } from "next/navigation";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { filterInQuery, hasBlanks, listHref, type Query } from "#app/lists/filter-address.ts";
import { FilterLine } from "#app/lists/filter-line.tsx";
import { listFileHref, ownListHref } from "#app/lists/list-href.ts";
import { marksExample } from "#app/lists/marks-example.ts";
import { OwnFilters } from "#app/lists/own-filters.tsx";
import pages from "#app/lists/pages.module.css";
import { placeFromAddress, placeInAddress } from "#app/lists/place.ts";
import { WorkTable } from "#app/lists/work-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { isWorkList } from "#shared/step/work-list.ts";
import { workListWords } from "#shared/words/work-lists.ts";

export const metadata: Metadata = { title: "A list - Dwellbook" };

type ListPageProps = {
  readonly params: Promise<{ readonly list: string }>;
  readonly searchParams: Promise<Query>;
};

/** One list of what is to be done, under a filter, in the order of whoever looks. */
export default async function ListPage({ params, searchParams }: ListPageProps): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const { list } = await params;
  if (!isWorkList(list)) notFound();
  const path = ownListHref(list);
  const query = await searchParams;
  const filter = filterInQuery(query);
  if (hasBlanks(query)) redirect(listHref(path, filter));
  const place = placeFromAddress(typeof query.after === "string" ? query.after : undefined);
  const { today, asked, saved, placed, lines, next, total } = await api.list.work({ list, filter, place });
  const { asks, says, none } = workListWords[list];
  const noneHere = asked.words === null ? none : "None under this filter.";
  return (
    <PageFrame
      frame={frame}
      heading={asks}
      lede={
        asked.refusals.length > 0
          ? undefined
          : `${asked.words === null ? "" : `${asked.words}: `}${total}, ${says}`
      }
      here="Exchanges"
    >
      <FilterLine path={path} asked={asked} />
      <OwnFilters list={list} asked={asked} saved={saved} />
      {asked.refusals.length === 0 && (
        <WorkTable
          {...{ list, today, placed, lines, person }}
          none={place === undefined ? noneHere : "No line comes after these."}
          marksExample={marksExample(frame, [...placed, ...lines])}
        />
      )}
      <nav className={pages.pages} aria-label="Pages of the list" data-screen-only>
        {place !== undefined && <a href={listHref(path, asked.texts)}>Back to the first of the list</a>}
        {next !== null && (
          <a href={listHref(path, asked.texts, { after: placeInAddress(next) })} rel="next">
            The lines after these
          </a>
        )}
        {may(person, "list.file") && asked.refusals.length === 0 && (
          <a href={listHref(listFileHref(list), asked.texts)}>This list as a file (CSV)</a>
        )}
        <a href={listHref("/lists", asked.texts)}>To all lists</a>
      </nav>
    </PageFrame>
  );
}
