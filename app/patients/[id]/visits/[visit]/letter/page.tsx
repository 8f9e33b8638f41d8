import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { visitHref } from "#app/visit/visit-pages.ts";
import { ForStaff, VisitLetter } from "#app/visits/visit-letter.tsx";
import { noLetterWords } from "#shared/words/visit-letter.ts";

export const metadata: Metadata = { title: "Letter about a visit - Dwellbook" };

type LetterPageProps = { readonly params: Promise<{ readonly id: string; readonly visit: string }> };

/** What the patient gets about a visit: a letter to print. */
export default async function LetterPage({ params }: LetterPageProps): Promise<ReactNode> {
  const { id: patientId, visit: visitId } = await params;
  const { api, frame } = await signedIn();
  const view = await orNotFound(api.visit.letter({ patientId, visitId }));
  const none = noLetterWords(view.visit, view.today);
  return (
    <PageFrame
      frame={frame}
      heading="What does the patient get to read?"
      lede={<a href={visitHref(patientId, visitId)}>All of this visit</a>}
      identity={identityOf(view.patient, null)}
      paper={none === null ? "home" : undefined}
    >
      {none === null ? (
        <>
          <ForStaff patient={view.patient} />
          <VisitLetter view={view} />
        </>
      ) : (
        <p>{none}</p>
      )}
    </PageFrame>
  );
}
