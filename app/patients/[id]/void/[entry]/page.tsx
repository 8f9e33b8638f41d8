import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import styles from "#app/patients/patient.module.css";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { VoidForm } from "#app/record/void-form.tsx";
import { namesOfStaff } from "#app/staff/names-of-staff.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { storySentence } from "#shared/words/events.ts";

export const metadata: Metadata = { title: "Void an entry - Dwellbook" };

type VoidPageProps = { readonly params: Promise<{ readonly id: string; readonly entry: string }> };

/** Why an entry does not count. It stays in the story. */
export default async function VoidPage({ params }: VoidPageProps): Promise<ReactNode> {
  const { id: patientId, entry: eventId } = await params;
  const { api, frame, person } = await signedIn();
  const { patient, state, story } = await orNotFound(api.patient.view({ patientId }));
  const entry = story.find((told) => told.eventId === eventId);
  if (entry === undefined) notFound();
  const nameOf = namesOfStaff(await api.staff.list());
  const leaveTo = `/patients/${patientId}`;
  return (
    <PageFrame frame={frame} heading="Why does this entry not count?" identity={identityOf(patient, null)}>
      <p className={styles.says}>
        It says: <bdi>{storySentence(entry, nameOf)}</bdi>
      </p>
      {may(person, "record.voided") ? (
        <VoidForm
          patientId={patientId}
          eventId={eventId}
          lastSeen={state.lastSeq}
          draft={await api.draft.load({ form: "record.voided", subject: eventId })}
          leaveTo={leaveTo}
        />
      ) : (
        <NotForYou back={leaveTo} />
      )}
    </PageFrame>
  );
}
