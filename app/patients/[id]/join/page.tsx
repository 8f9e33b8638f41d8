import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { JoinedInto } from "#app/join/join-notices.tsx";
import { OtherRecord } from "#app/join/other-record.tsx";
import { OtherRecordByNumber } from "#app/join/other-records.tsx";
import { identityOf } from "#app/patients/identity-of.ts";
import styles from "#app/patients/patient.module.css";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";

export const metadata: Metadata = { title: "Find the other record - Dwellbook" };

type JoinPageProps = { readonly params: Promise<{ readonly id: string }> };

/** Which other record is this person's: by its number, or among those that are alike. */
export default async function JoinPage({ params }: JoinPageProps): Promise<ReactNode> {
  const { id: patientId } = await params;
  const { api, frame, person } = await signedIn();
  const { patient, joined } = await orNotFound(api.patient.view({ patientId }));
  const frameOf = {
    frame,
    heading: "Which other record is this person's?",
    identity: identityOf(patient, null),
  };
  if (joined.into !== null)
    return (
      <PageFrame {...frameOf}>
        <JoinedInto into={joined.into} />
      </PageFrame>
    );
  if (!may(person, "record.joined"))
    return (
      <PageFrame {...frameOf}>
        <NotForYou back={`/patients/${patientId}`} />
      </PageFrame>
    );
  const alike = await api.patient.otherRecords({ patientId, number: "" });
  return (
    <PageFrame {...frameOf}>
      <OtherRecordByNumber patientId={patientId} />
      <section className={styles.section}>
        <h2>Alike by name or birth date</h2>
        {alike.length === 0 ? (
          <p>No other record has the same birth date or the same names.</p>
        ) : (
          <ul>
            {alike.map((record) => (
              <OtherRecord key={record.id} record={record} patientId={patientId} />
            ))}
          </ul>
        )}
      </section>
      <p data-screen-only>
        <a href={`/patients/${patientId}`}>Back to the patient</a>
      </p>
    </PageFrame>
  );
}
