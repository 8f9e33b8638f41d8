import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { type SignedIn, signedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { type Query, slotInQuery } from "#app/visit/asked-in-query.ts";
import { refusedOf } from "#app/visit/refused-of.ts";
import { TakeSlot } from "#app/visit/take-slot.tsx";
import { isVisitPageAct, visitPageActs } from "#app/visit/visit-acts.ts";
import { VisitFacts } from "#app/visit/visit-facts.tsx";
import { VisitForm } from "#app/visit/visit-form.tsx";
import { type VisitPage, visitHref } from "#app/visit/visit-pages.ts";
import { isOpenVisit } from "#shared/visit/visit.ts";
import { onRecord } from "#shared/words/on-record.ts";
import { answerWords } from "#shared/words/prerequisites.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

export const metadata: Metadata = { title: "Visit - Dwellbook" };

type VisitActPageProps = {
  readonly params: Promise<{ readonly id: string; readonly visit: string; readonly act: string }>;
  readonly searchParams: Promise<Query>;
};

/** One thing that is said of a visit, or another slot for it. */
export default async function VisitActPage({ params, searchParams }: VisitActPageProps): Promise<ReactNode> {
  const { id: patientId, visit: visitId, act } = await params;
  if (!isVisitPageAct(act)) notFound();
  const { api, frame } = await signedIn();
  const view = await orNotFound(api.visit.view({ patientId, visitId }));
  const draft = await api.draft.load({ form: `visit.${act === "move" ? "moved" : act}`, subject: visitId });
  return (
    <PageFrame frame={frame} heading={visitPageActs[act]} identity={identityOf(view.patient, null)}>
      <VisitFacts view={view} />
      {act === "settle" && (
        <p>
          Type settled, does not apply, needed or ?, and after a colon what was agreed and by whom. A blank
          leaves it as it stands.
        </p>
      )}
      {act === "move" ? (
        <Move view={view} api={api} query={await searchParams} draft={draft} />
      ) : (
        <VisitForm
          act={act}
          patientId={patientId}
          visitId={visitId}
          things={thingsOf(view)}
          lastSeen={view.lastSeen}
          draft={draft}
        />
      )}
    </PageFrame>
  );
}

/** What stands and what is on record, beside each thing. */
function thingsOf(view: VisitPage) {
  const known = { ...view, contact: view.patient };
  return view.prerequisites.map(({ thing, open, answer }) => {
    const stands = [answerWords[answer?.state ?? "open"], answer?.says].filter(Boolean).join(": ");
    return {
      thing,
      hint: [open ? `now ${stands}` : `${stands}; blank leaves it so`, onRecord(thing, known)]
        .filter((part) => part !== null)
        .join("; "),
    };
  });
}

type MoveProps = {
  readonly view: VisitPage;
  readonly api: SignedIn["api"];
  readonly query: Query;
  readonly draft: Awaited<ReturnType<SignedIn["api"]["draft"]["load"]>>;
};

async function Move({ view, api, query, draft }: MoveProps): Promise<ReactNode> {
  const { visit, patient, lastSeen } = view;
  const leaveTo = visitHref(patient.id, visit.id);
  if (!isOpenVisit(visit)) return <p role="status">{refusalSentence({ code: "visit-over" })}</p>;
  const answer = await refusedOf(
    api.visit.offers({ patientId: patient.id, moves: visit.id, urgent: visit.urgent || undefined }),
  );
  if (!answer.ok)
    return answer.refusals.map((refusal) => (
      <p key={refusal.code} role="status">
        {refusalSentence(refusal)} <a href={leaveTo}>To the visit</a>
      </p>
    ));
  const slots = answer.value;
  return (
    <TakeSlot
      slots={slots}
      to={{ kind: "move", patientId: patient.id, visitId: visit.id, urgent: slots.urgent }}
      begun={slotInQuery(query)}
      lastSeen={lastSeen}
      draft={draft}
      leaveTo={leaveTo}
    />
  );
}
