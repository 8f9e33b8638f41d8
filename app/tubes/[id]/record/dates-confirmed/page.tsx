import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import { ConfirmDates } from "#app/record/confirm-dates.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { ProposedLines } from "#app/tubes/proposed-dates.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { tubeName } from "#shared/tube/name.ts";

export const metadata: Metadata = { title: "Confirm new dates - Dwellbook" };

type ConfirmPageProps = { readonly params: Promise<{ readonly id: string }> };

/** What stands and what is proposed, and the press that lets the new dates stand. */
export default async function ConfirmDatesPage({ params }: ConfirmPageProps): Promise<ReactNode> {
  const { id: tubeId } = await params;
  const { api, frame, person } = await signedIn();
  const { patient, tube, proposals, lastSeen } = await orNotFound(api.tube.view({ tubeId }));
  return (
    <PageFrame
      frame={frame}
      heading="Shall the new dates stand?"
      identity={identityOf(patient, tubeName(tube))}
    >
      {proposals.length === 0 ? (
        <p>No change of dates is proposed for this tube.</p>
      ) : (
        <ProposedLines proposals={proposals} />
      )}
      {may(person, "record.datesConfirmed") ? (
        <ConfirmDates patientId={patient.id} tubeId={tubeId} lastSeen={lastSeen} />
      ) : (
        <NotForYou back={`/tubes/${tubeId}`} />
      )}
    </PageFrame>
  );
}
