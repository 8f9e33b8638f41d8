import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { UndoAct } from "#app/record/undo-act.tsx";
import { namesOfStaff } from "#app/staff/names-of-staff.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { mayUndo } from "#shared/access/may.ts";
import { storySentence } from "#shared/words/events.ts";

export const metadata: Metadata = { title: "Undo - Dwellbook" };

type UndoPageProps = { readonly params: Promise<{ readonly id: string; readonly act: string }> };

/** Everything that one act recorded, and the one press that takes it back. */
export default async function UndoPage({ params }: UndoPageProps): Promise<ReactNode> {
  const { id: patientId, act: actId } = await params;
  const { api, frame, person } = await signedIn();
  const { patient, story } = await orNotFound(api.patient.view({ patientId }));
  const entries = story.filter((told) => told.actId === actId);
  const [first] = entries;
  if (first === undefined) notFound();
  const nameOf = namesOfStaff(await api.staff.list());
  const back = `/patients/${patientId}`;
  return (
    <PageFrame frame={frame} heading="Take this back?" identity={identityOf(patient, null)}>
      {mayUndo(person, first.recordedById) ? (
        <UndoAct said={entries.map((entry) => storySentence(entry, nameOf)).join(" ")} undoes={actId}>
          <a href={back}>To the patient</a>
        </UndoAct>
      ) : (
        <NotForYou back={back} />
      )}
    </PageFrame>
  );
}
