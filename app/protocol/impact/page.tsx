import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { besideColumn, movedColumns } from "#app/dates/moved-columns.tsx";
import type { Query } from "#app/lists/filter-address.ts";
import { pageInQuery } from "#app/lists/page-address.ts";
import { Pages } from "#app/lists/pages.tsx";
import { SignDraft } from "#app/protocol/sign-draft.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { touchedWords } from "#shared/words/proposed-days.ts";

export const metadata: Metadata = { title: "Whom the draft touches - Dwellbook" };

type ImpactPageProps = {
  readonly searchParams: Promise<Query>;
};

/** Before anybody signs: each date that the draft would propose, and how many of them would be past today. */
export default async function ImpactPage({ searchParams }: ImpactPageProps): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const heading = "Whom does the draft touch?";
  if (!may(person, "protocol.impact"))
    return (
      <PageFrame frame={frame} heading={heading}>
        <NotForYou back="/protocol" />
      </PageFrame>
    );
  const { draft } = await api.protocol.draft();
  if (draft === null)
    return (
      <PageFrame frame={frame} heading={heading}>
        <p>
          There is no draft. <a href="/protocol">To the protocol</a>
        </p>
      </PageFrame>
    );
  const page = pageInQuery(await searchParams);
  const { today, tubes, pastLatest, steps, lines, before, hasNext, revision } = await api.protocol.impact({
    page,
  });
  return (
    <PageFrame frame={frame} heading={heading} lede={touchedWords({ tubes, pastLatest })}>
      <p data-screen-only>
        <a href="/protocol/draft">What the draft changes</a>. Drafted by {draft.authors.join(", ")}. Until
        somebody signs, nothing is proposed; after that the old dates stand until a nurse confirms.
      </p>
      <DataTable
        caption="Dates that would be proposed"
        columns={[...movedColumns(today), besideColumn]}
        rows={lines}
        keyOf={({ tube, step }) => `${tube.id} ${step}`}
        before={before}
        total={steps}
        none="No date that stands would be another. Clocks that start after it is signed go by the new rows."
      />
      <Pages page={page} hasNext={hasNext} hrefOf={(to) => `/protocol/impact?page=${to}`} />
      {may(person, "protocol.sign") ? (
        <SignDraft key={revision} revision={revision} userName={person.userName} />
      ) : (
        <p>An approver signs it, signed in to their own account.</p>
      )}
    </PageFrame>
  );
}
