import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import styles from "#app/call/call.module.css";
import { CallForm } from "#app/call/call-form.tsx";
import { CallLinks } from "#app/call/call-links.tsx";
import { Held } from "#app/call/held.tsx";
import { HowToReach } from "#app/call/how-to-reach.tsx";
import { LastCall } from "#app/call/last-call.tsx";
import { WhyCalled } from "#app/call/why-called.tsx";
import { identityOf } from "#app/patients/identity-of.ts";
import { TubesTable } from "#app/patients/tubes-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { VisitsOf } from "#app/visit/visits-of.tsx";
import { printInstant, printWhen } from "#shared/day/print-day.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { emergencyCaution, onCallRoute } from "#shared/words/home-paper.ts";

export const metadata: Metadata = { title: "Call - Dwellbook" };

type CallPageProps = {
  readonly params: Promise<{ readonly id: string }>;
  /** `goon`: with what somebody else typed and did not save. */
  readonly searchParams: Promise<{ readonly goon?: string }>;
};

/** One call about one patient and all of that patient's tubes: whom to ask for, what was tried, what to ask, what it opens. */
export default async function CallPage({ params, searchParams }: CallPageProps): Promise<ReactNode> {
  const { id: patientId } = await params;
  const { goon } = await searchParams;
  const { api, frame, person, today } = await signedIn();
  const view = await orNotFound(api.calls.view({ patientId }));
  const { patient, state, steps, charts } = await api.patient.view({ patientId });
  const { context, there, calls, lastCall, othersDraft, clinic, lastSeen } = view;
  const own = await api.draft.load({ form: "calls.saved", subject: patientId });
  const taken: StoredDraft | null =
    goon === undefined || othersDraft === null ? null : { actId: newActId(), texts: othersDraft.texts };
  const contact = patient.contact as Contact;
  return (
    <PageFrame frame={frame} heading="Who is called, and what is asked?" identity={identityOf(patient, null)}>
      {state.died !== null && <p role="status">Died {printWhen(state.died.when)}. No call is due.</p>}
      <Held patientId={patientId} />
      <p>Ask for the full name and the birth date before anything is said.</p>
      {othersDraft !== null && goon === undefined && own === null && (
        <p role="status">
          {othersDraft.by} began this call {printInstant(othersDraft.savedAt, clinic.zone)} and did not save
          it. <a href={`/patients/${patientId}/call?goon=yes`}>Go on with what is typed there</a>
        </p>
      )}
      <div className={styles.columns}>
        <HowToReach
          contact={contact}
          calls={calls}
          language={patient.language}
          needsInterpreter={patient.needsInterpreter}
          there={there}
        />
        <section className={styles.reach}>
          <h2>Why, and what was told</h2>
          <WhyCalled steps={steps} today={today} />
          <LastCall last={lastCall} />
        </section>
      </div>
      <TubesTable {...{ state, steps, charts, today, person }} />
      <CallLinks tubes={state.tubes} />
      <VisitsOf patientId={patientId} state={state} tubeId={null} />
      <CallForm key={goon} patientId={patientId} context={context} lastSeen={lastSeen} draft={taken ?? own} />
      <p>
        {emergencyCaution} {onCallRoute}
      </p>
    </PageFrame>
  );
}
