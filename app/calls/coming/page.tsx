import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { callColumns } from "#app/calls/call-columns.tsx";
import type { Query } from "#app/lists/filter-address.ts";
import { pageInQuery } from "#app/lists/page-address.ts";
import { Pages } from "#app/lists/pages.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { StopKeys } from "#app/visits/stop-keys.tsx";

export const metadata: Metadata = { title: "Calls to come - Dwellbook" };

type ComingPageProps = { readonly searchParams: Promise<Query> };

/** Who comes up in the next days and not today, the first day first. */
export default async function ComingPage({ searchParams }: ComingPageProps): Promise<ReactNode> {
  const { api, frame } = await signedIn();
  const page = pageInQuery(await searchParams);
  const { today, lines, total, before, days } = await api.calls.list({ which: "coming", page });
  return (
    <PageFrame
      frame={frame}
      heading={`Who is rung in the next ${days} days?`}
      lede="The first day first; today's calls are not among them"
      here="Calls"
    >
      <StopKeys />
      <DataTable
        caption="Calls to come"
        columns={callColumns(today)}
        rows={lines}
        keyOf={({ patient }) => patient.id}
        before={before}
        total={total}
        none={page === 1 ? `No call comes up in the next ${days} days.` : "No line comes after these."}
      />
      <Pages
        page={page}
        hasNext={before + lines.length < total && lines.length > 0}
        hrefOf={(to) => (to === 1 ? "/calls/coming" : `/calls/coming?page=${to}`)}
      />
      <p data-screen-only>
        <a href="/calls">To today's calls</a>
      </p>
    </PageFrame>
  );
}
