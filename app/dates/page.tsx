import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { ConfirmProposals } from "#app/dates/confirm-proposals.tsx";
import type { Query } from "#app/lists/filter-address.ts";
import { pageInQuery } from "#app/lists/page-address.ts";
import { Pages } from "#app/lists/pages.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";

export const metadata: Metadata = { title: "Proposed dates - Dwellbook" };

type DatesPageProps = { readonly searchParams: Promise<Query> };

/** Dates that a newer table or calendar would give: the old ones stand until somebody confirms, one by one or together. */
export default async function DatesPage({ searchParams }: DatesPageProps): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const page = pageInQuery(await searchParams);
  const { today, lines, count, before, hasNext } = await api.proposal.list({ page });
  return (
    <PageFrame
      frame={frame}
      heading="Which new dates shall stand?"
      lede={count === 0 ? undefined : "The old dates stand until somebody confirms."}
    >
      <ConfirmProposals
        lines={lines}
        count={count}
        before={before}
        today={today}
        mayConfirm={may(person, "proposal.confirm")}
      />
      <Pages page={page} hasNext={hasNext} hrefOf={(to) => `/dates?page=${to}`} />
    </PageFrame>
  );
}
