import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import { LinkLine } from "#app/record/act-links.tsx";
import { tubeFormHref } from "#app/record/procedures.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { BeforeVisit } from "#app/visit/before-visit.tsx";
import visitStyles from "#app/visit/visit.module.css";
import { actsNow, visitPageActs } from "#app/visit/visit-acts.ts";
import { VisitFacts } from "#app/visit/visit-facts.tsx";
import { bookingHref, type VisitPage, visitHref } from "#app/visit/visit-pages.ts";
import { plannedAct } from "#shared/record/tube/planned-texts.ts";
import { actLabels } from "#shared/words/acts.ts";

export const metadata: Metadata = { title: "Visit - Dwellbook" };

type VisitPageProps = { readonly params: Promise<{ readonly id: string; readonly visit: string }> };

/** The form that records what was done: an exchange as it was planned. */
function formOf({
  tube,
  act,
}: VisitPage["tubes"][number]): "checked" | "removed" | ReturnType<typeof plannedAct> {
  if (act === "exchange") return plannedAct(tube);
  return act === "check" ? "checked" : "removed";
}

/** One visit: when and for which tubes, what is to be settled first, what may be said of it now. */
export default async function OneVisitPage({ params }: VisitPageProps): Promise<ReactNode> {
  const { id: patientId, visit: visitId } = await params;
  const { api, frame } = await signedIn();
  const view = await orNotFound(api.visit.view({ patientId, visitId }));
  const { visit, today, patient } = view;
  const href = visitHref(patientId, visitId);
  const acts = actsNow(visit, today).map((act) => ({ href: `${href}/${act}`, word: visitPageActs[act] }));
  const isOver = acts.length === 0;
  return (
    <PageFrame
      frame={frame}
      heading="How does this visit stand?"
      lede={<a href={`/patients/${patientId}`}>All of this patient</a>}
      identity={identityOf(patient, null)}
    >
      <VisitFacts view={view} />
      {!isOver && <DoneBy view={view} />}
      {!isOver && <LinkLine label="What to say of this visit" links={acts} />}
      {isOver && visit.state !== "done" && (
        <p data-screen-only>
          <a href={bookingHref(patientId, visit.tubes[0]?.tubeId)}>Book another visit for these tubes</a>
        </p>
      )}
      <p data-screen-only>
        <a href={`${href}/letter`}>The letter to the patient</a>
      </p>
      {!isOver && (
        <section className={visitStyles.section}>
          <BeforeVisit view={view} />
        </section>
      )}
    </PageFrame>
  );
}

/** Recording what was done with each tube is what makes the visit done: planned facts stand filled in. */
function DoneBy({ view }: { readonly view: VisitPage }): ReactNode {
  const { visit, tubes, today } = view;
  if (visit.on > today && visit.state !== "arrived") return null;
  return (
    <LinkLine
      label="Record what was done"
      links={tubes
        .filter(({ open }) => open)
        .map((one) => ({
          href: `${tubeFormHref(one.tube.id, formOf(one))}?planned=yes`,
          word: `${actLabels[formOf(one)]}: ${one.name}`,
        }))}
    />
  );
}
