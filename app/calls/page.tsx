import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import type { Query } from "#app/lists/filter-address.ts";
import { pageInQuery } from "#app/lists/page-address.ts";
import { Pages } from "#app/lists/pages.tsx";
import { LinkLine } from "#app/record/act-links.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { StopKeys } from "#app/visits/stop-keys.tsx";
import { may } from "#shared/access/may.ts";
import { callColumns } from "./call-columns.tsx";
import styles from "./calls.module.css";
import { ClosedToday } from "./closed-today.tsx";

export const metadata: Metadata = { title: "Calls - Dwellbook" };

type CallsPageProps = { readonly searchParams: Promise<Query> };

/** Whom somebody rings today, in the order in which they are rung. */
export default async function CallsPage({ searchParams }: CallsPageProps): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const page = pageInQuery(await searchParams);
  const { today, lines, total, before, counts, days, closed } = await api.calls.list({ which: "due", page });
  const links = [
    { href: "/calls/paper", word: "Call list to print" },
    { href: "/calls/closing", word: "The day's closing list" },
    ...(may(person, "calls.file") ? [{ href: "/api/calls", word: "This list as a file (CSV)" }] : []),
  ];
  return (
    <PageFrame
      frame={frame}
      heading="Whom do we ring today?"
      lede={page === 1 ? "In the order in which they are rung" : "Further down the list"}
      here="Calls"
    >
      <ClosedToday closed={closed} />
      <LinkLine label="To print and to take away" links={links} />
      <p className={styles.said}>
        {counts.coming === 0 ? (
          `Nobody else comes up in the next ${days} days.`
        ) : (
          <>
            In the next {days} days: <a href="/calls/coming">{counts.coming} more</a>
          </>
        )}
      </p>
      <StopKeys />
      <DataTable
        caption="Calls due"
        columns={callColumns(today)}
        rows={lines}
        keyOf={({ patient }) => patient.id}
        before={before}
        total={total}
        none={page === 1 ? "No call is due." : "No line comes after these."}
      />
      <Pages
        page={page}
        hasNext={before + lines.length < total && lines.length > 0}
        hrefOf={(to) => (to === 1 ? "/calls" : `/calls?page=${to}`)}
      />
    </PageFrame>
  );
}
