import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { JoinRecordForm } from "#app/join/join-form.tsx";
import { SideBySide, type Sides } from "#app/join/side-by-side.tsx";
import { identityOf } from "#app/patients/identity-of.ts";
import styles from "#app/patients/patient.module.css";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

export const metadata: Metadata = { title: "Join two records - Dwellbook" };

type JoinBothPageProps = { readonly params: Promise<{ readonly id: string; readonly other: string }> };

/** Why these two are not joined as they stand; null where they can be. */
function whyNot({ stays, other }: Sides): string | null {
  if (stays.patient.id === other.patient.id) return refusalSentence({ code: "joins-itself" });
  if (other.joined.into?.id === stays.patient.id) return "The other record goes on in this one.";
  if (stays.joined.into !== null || other.joined.into !== null)
    return refusalSentence({ code: "joined-already" });
  return other.joined.from.length > 0 ? refusalSentence({ code: "others-joined" }) : null;
}

/** Both records side by side, and the form that joins them. */
export default async function JoinBothPage({ params }: JoinBothPageProps): Promise<ReactNode> {
  const { id: patientId, other: otherId } = await params;
  const { api, frame, person } = await signedIn();
  const stays = await orNotFound(api.patient.view({ patientId }));
  const other = await orNotFound(api.patient.view({ patientId: otherId }));
  const back = `/patients/${patientId}`;
  const refused = whyNot({ stays, other });
  const mayJoin = may(person, "record.joined");
  return (
    <PageFrame
      frame={frame}
      heading="Are these two records one person's?"
      identity={identityOf(stays.patient, null)}
    >
      <SideBySide stays={stays} other={other} />
      <p className={styles.section}>
        Joined, every tube and entry of the other counts in this record; its numbers still lead here. What the
        two records say against each other becomes steps to settle. The contact details of this record stay.{" "}
        <a href={`/patients/${otherId}/join/${patientId}`} data-screen-only>
          The other one should stay
        </a>
      </p>
      {refused !== null && (
        <p role="status">
          {refused} <a href={back}>Back to the patient</a>
        </p>
      )}
      {refused === null && !mayJoin && <NotForYou back={back} />}
      {mayJoin && (
        <JoinRecordForm
          patientId={patientId}
          otherId={otherId}
          joinable={refused === null}
          draft={await api.draft.load({ form: "record.joined", subject: otherId })}
        />
      )}
    </PageFrame>
  );
}
