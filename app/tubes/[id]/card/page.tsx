import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import { TubeCard } from "#app/tubes/tube-card.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { tubeName } from "#shared/tube/name.ts";
import { noPaperWords } from "#shared/words/home-paper.ts";

export const metadata: Metadata = { title: "Tube card - Dwellbook" };

type CardPageProps = { readonly params: Promise<{ readonly id: string }> };

/** A card of one tube for the patient's wallet: a page to print and cut. */
export default async function CardPage({ params }: CardPageProps): Promise<ReactNode> {
  const { id: tubeId } = await params;
  const { api, frame } = await signedIn();
  const view = await orNotFound(api.tube.view({ tubeId }));
  const { tube, patient } = view;
  const gone = noPaperWords(tube.status);
  return (
    <PageFrame
      frame={frame}
      heading="What does the patient carry?"
      lede={<a href={`/tubes/${tubeId}`}>All of this tube</a>}
      identity={identityOf(patient, tubeName(tube))}
      paper={gone === null ? "home" : undefined}
    >
      {gone === null ? <TubeCard view={view} /> : <p>{gone}</p>}
    </PageFrame>
  );
}
