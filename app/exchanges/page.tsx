import type { Metadata } from "next";
import { redirect } from "next/navigation";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { ExchangeTable } from "#app/exchanges/exchange-table.tsx";
import { filterInQuery, hasBlanks, listHref, type Query } from "#app/lists/filter-address.ts";
import { FilterLine } from "#app/lists/filter-line.tsx";
import { listFileHref } from "#app/lists/list-href.ts";
import type { DuePage } from "#app/lists/list-line.ts";
import { OwnFilters } from "#app/lists/own-filters.tsx";
import pages from "#app/lists/pages.module.css";
import { placeFromAddress, placeInAddress } from "#app/lists/place.ts";
import { StripKey } from "#app/strip/strip-key.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import styles from "./exchanges.module.css";

export const metadata: Metadata = { title: "Exchanges - Dwellbook" };

const PATH = "/exchanges";

/** Which tubes come next: one page of the due list, drawn. */
export default async function ExchangesPage({
  searchParams,
}: {
  readonly searchParams: Promise<Query>;
}): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const query = await searchParams;
  const filter = filterInQuery(query);
  if (hasBlanks(query)) redirect(listHref(PATH, filter));
  const place = placeFromAddress(typeof query.after === "string" ? query.after : undefined);
  const page = await api.list.exchanges({ filter, place });
  const { today, lines, next, asked, saved, proposed } = page;
  return (
    <PageFrame
      frame={frame}
      heading="Which tubes come next?"
      lede={ledeOf(page, place === undefined)}
      here="Exchanges"
    >
      {proposed > 0 && (
        <p data-screen-only>
          <a href="/dates">
            New dates are proposed for {proposed} open {proposed === 1 ? "step" : "steps"}
          </a>
          : the old ones stand until somebody confirms.
        </p>
      )}
      <p className={styles.lists} data-screen-only>
        <a href={listHref("/lists", asked.texts)}>Lists by what is to be done</a>: due, overdue, unconfirmed
        and more
      </p>
      <FilterLine path={PATH} asked={asked} />
      <OwnFilters list="exchanges" asked={asked} saved={saved} />
      {asked.refusals.length === 0 && (
        <div className={styles.list}>
          {lines.length === 0 ? (
            <p className={styles.none}>
              {noneWords(page, place === undefined)}{" "}
              {asked.words !== null && <a href={PATH}>Take the filter away</a>}
            </p>
          ) : (
            <ExchangeTable today={today} lines={lines} />
          )}
        </div>
      )}
      <nav className={pages.pages} aria-label="Pages of the list" data-screen-only>
        {place !== undefined && <a href={listHref(PATH, asked.texts)}>Back to the longest due</a>}
        {next !== null && (
          <a href={listHref(PATH, asked.texts, { after: placeInAddress(next) })} rel="next">
            The tubes after these
          </a>
        )}
        {may(person, "list.file") && asked.refusals.length === 0 && (
          <a href={listHref(listFileHref("exchanges"), asked.texts)}>This list as a file (CSV)</a>
        )}
      </nav>
      {lines.length > 0 && <StripKey />}
    </PageFrame>
  );
}

/** What stands here, also on paper: the filter in words and how many stand under it. */
function ledeOf({ asked, total }: DuePage, isFirst: boolean): string | undefined {
  if (asked.refusals.length > 0) return undefined;
  const place = isFirst ? "the longest due first" : "further down the list";
  if (asked.words === null || total === null) return place.charAt(0).toUpperCase() + place.slice(1);
  return `${asked.words}: ${total}, ${place}`;
}

function noneWords({ asked }: DuePage, isFirst: boolean): string {
  if (!isFirst) return "No tube comes after these.";
  return asked.words === null
    ? "No tube is in. As soon as one is recorded, it stands here with the date of its exchange, removal or review."
    : "Nothing stands under this filter.";
}
