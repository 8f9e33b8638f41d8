import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { askedInQuery, type Query, slotInQuery } from "#app/visit/asked-in-query.ts";
import { refusedOf } from "#app/visit/refused-of.ts";
import type { SendSlot } from "#app/visit/send-slot.ts";
import { SlotsAsked } from "#app/visit/slots-asked.tsx";
import { TakeSlot } from "#app/visit/take-slot.tsx";
import { VisitsOf } from "#app/visit/visits-of.tsx";
import { printNotOn } from "#shared/record/field/not-on-field.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

export const metadata: Metadata = { title: "Book a visit - Dwellbook" };

const ALL_BOOKED =
  "Every tube that can be seen has a visit, or asks for none. Move that visit, or begin at a tube's own page.";

type BookingPageProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<Query>;
};

/** Three slots for a patient's tubes now, each with why; or another slot, typed. */
export default async function BookingPage({ params, searchParams }: BookingPageProps): Promise<ReactNode> {
  const { id: patientId } = await params;
  const query = await searchParams;
  const { api, frame } = await signedIn();
  const { patient, state } = await orNotFound(api.patient.view({ patientId }));
  const asked = askedInQuery(query);
  const { tubes, first, notOn, minutes, urgent } = asked;
  const path = `/patients/${patientId}/visit`;
  const answer = await refusedOf(
    api.visit.offers({
      patientId,
      tubes: tubes && [...tubes],
      first,
      notOn: notOn && [...notOn],
      minutes,
      urgent,
    }),
  );
  const leaveTo = `/patients/${patientId}`;
  if (!answer.ok)
    return (
      <PageFrame frame={frame} heading="When can this patient come?" identity={identityOf(patient, null)}>
        {answer.refusals.map((refusal) => (
          <p key={refusal.code} role="status">
            {tubes === undefined && refusal.code === "visit-without-tube"
              ? ALL_BOOKED
              : refusalSentence(refusal)}
          </p>
        ))}
        <VisitsOf patientId={patientId} state={state} tubeId={first ?? null} offers={false} />
        <p>
          <a href={tubes === undefined ? leaveTo : path}>
            {tubes === undefined ? "To the patient" : "Choose again"}
          </a>
        </p>
      </PageFrame>
    );
  const slots = answer.value;
  const to: SendSlot = {
    kind: "book",
    patientId,
    tubes: slots.tubes.map(({ tubeId, act }) => ({ tubeId, act })),
    urgent: slots.urgent,
    notOn: printNotOn(slots.notOn),
  };
  return (
    <PageFrame frame={frame} heading="When can this patient come?" identity={identityOf(patient, null)}>
      <SlotsAsked path={path} slots={slots} asked={asked} />
      <TakeSlot
        slots={slots}
        to={to}
        begun={slotInQuery(query)}
        lastSeen={state.lastSeq}
        draft={await api.draft.load({ form: "visit.booked", subject: patientId })}
        leaveTo={leaveTo}
      />
    </PageFrame>
  );
}
