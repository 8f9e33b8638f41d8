import type { Metadata } from "next";
import { notFound, redirect } from "next/navigation";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { filterInQuery, hasBlanks, listHref, type Query } from "#app/lists/filter-address.ts";
import { FilterLine } from "#app/lists/filter-line.tsx";
import { marksExample } from "#app/lists/marks-example.ts";
import { pageInQuery } from "#app/lists/page-address.ts";
import { Pages } from "#app/lists/pages.tsx";
import { partHref } from "#app/today/part-href.ts";
import { partWords } from "#app/today/part-words.ts";
import { StepsTable } from "#app/today/steps-table.tsx";
import styles from "#app/today/today.module.css";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { isDayPart } from "#shared/step/day-part.ts";

export const metadata: Metadata = { title: "Today, one part - Dwellbook" };

type PartPageProps = {
  readonly params: Promise<{ readonly part: string }>;
  readonly searchParams: Promise<Query>;
};

/** One part of Today by itself, with all that Today has no room for. */
export default async function PartPage({ params, searchParams }: PartPageProps): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const { part } = await params;
  if (!isDayPart(part)) notFound();
  const query = await searchParams;
  const filter = filterInQuery(query);
  if (hasBlanks(query)) redirect(partHref(part, filter));
  const page = pageInQuery(query);
  const { today, asked, lines, before, total } = await api.list.dayPart({ part, page, filter });
  const { head, none } = partWords[part];
  const noneHere = asked.words === null ? none : "None under this filter.";
  return (
    <PageFrame
      frame={frame}
      heading="Who needs something today?"
      lede={asked.words ?? undefined}
      here="Today"
    >
      <FilterLine path={partHref(part)} asked={asked} />
      {asked.refusals.length === 0 && (
        <div className={styles.parts}>
          <StepsTable
            caption={head}
            before={before}
            none={page === 1 ? noneHere : "No row comes after these."}
            marksExample={marksExample(frame, lines)}
            {...{ lines, total, today, person }}
          />
        </div>
      )}
      <Pages
        page={page}
        hasNext={before + lines.length < total && lines.length > 0}
        hrefOf={(to) => partHref(part, asked.texts, to)}
      />
      <p data-screen-only>
        <a href={listHref("/", asked.texts)}>Back to the whole of Today</a>
      </p>
    </PageFrame>
  );
}
