import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { shareAsked } from "#app/calls/share-asked.ts";
import type { Query } from "#app/lists/filter-address.ts";
import { LinkLine } from "#app/record/act-links.tsx";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { CallPaper } from "./call-paper.tsx";

export const metadata: Metadata = { title: "Call list to print - Dwellbook" };

type PaperPageProps = { readonly searchParams: Promise<Query> };

/** Who go through the list in turns. */
const shares = [
  { href: "/calls/paper", word: "All for one caller" },
  { href: "/calls/paper?share=1&of=2", word: "First of two callers" },
  { href: "/calls/paper?share=2&of=2", word: "Second of two callers" },
] as const;

/** Today's calls for a day without network, a sheet a patient: a page to print. */
export default async function PaperPage({ searchParams }: PaperPageProps): Promise<ReactNode> {
  const { api, frame } = await signedIn();
  const asked = shareAsked(await searchParams);
  const page = await api.calls.paper(asked);
  const { patients, total, left, isExample } = page;
  return (
    <PageFrame
      frame={frame}
      heading={asked.of === 1 ? "Call list" : `Call list, caller ${asked.share} of ${asked.of}`}
      lede={`${patients.length} of ${total} ${total === 1 ? "call" : "calls"} due${left > 0 ? `; ${left} stand on no print` : ""}`}
      here="Calls"
    >
      <LinkLine
        label="For how many callers"
        links={[...shares, { href: "/calls", word: "The list on the screen" }]}
      />
      {isExample && (
        <p>
          <ExampleMark /> What is asked and what an answer opens is by rows that nobody in the clinic has
          approved yet.
        </p>
      )}
      {patients.length === 0 ? <p>No call is due.</p> : <CallPaper page={page} />}
    </PageFrame>
  );
}
