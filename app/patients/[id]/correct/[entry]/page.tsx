import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import styles from "#app/patients/patient.module.css";
import { RecordEvent } from "#app/record/form-registry.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { namesOfStaff } from "#app/staff/names-of-staff.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { numberedTubes } from "#shared/record/numbered-tubes.ts";
import { tubeInForm } from "#shared/record/tube-in-form.ts";
import { tubeName } from "#shared/tube/name.ts";
import { storySentence } from "#shared/words/events.ts";

export const metadata: Metadata = { title: "Correct an entry - Dwellbook" };

type CorrectPageProps = { readonly params: Promise<{ readonly id: string; readonly entry: string }> };

/** An entry's own form, open with what it says now; why it is changed comes first. */
export default async function CorrectPage({ params }: CorrectPageProps): Promise<ReactNode> {
  const { id: patientId, entry: eventId } = await params;
  const { api, frame, person } = await signedIn();
  const { patient, state, story } = await orNotFound(api.patient.view({ patientId }));
  const leaveTo = `/patients/${patientId}`;
  const frameOf = (tube: string | null) => ({
    frame,
    heading: "What should this entry have said?",
    identity: identityOf(patient, tube),
  });
  if (!may(person, "record.amended"))
    return (
      <PageFrame {...frameOf(null)}>
        <NotForYou back={leaveTo} />
      </PageFrame>
    );
  const { kind, tubeId, texts } = await orNotFound(api.record.amending({ patientId, eventId }));
  const tube = state.tubes.find(({ id }) => id === tubeId) ?? null;
  const told = story.find((entry) => entry.eventId === eventId);
  const nameOf = namesOfStaff(await api.staff.list());
  return (
    <PageFrame {...frameOf(tube === null ? null : tubeName(tube))}>
      {told !== undefined && (
        <p className={styles.says}>
          It says: <bdi>{storySentence(told, nameOf)}</bdi>
        </p>
      )}
      <p className={styles.says} data-screen-only>
        <a href={`/patients/${patientId}/void/${eventId}`}>This entry should not stand at all</a>
      </p>
      <RecordEvent
        kind={kind}
        patientId={patientId}
        tubeId={tubeId}
        context={{
          ...(await api.record.beside()),
          tube: tube === null ? null : tubeInForm(tube),
          tubes: numberedTubes(state.tubes),
          opens: { tubeId: "", number: 0 },
        }}
        lastSeen={state.lastSeq}
        draft={await api.draft.load({ form: "record.amended", subject: eventId })}
        leaveTo={leaveTo}
        amends={{ eventId, texts }}
        plan={null}
      />
    </PageFrame>
  );
}
