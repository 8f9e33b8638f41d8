import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { JoinedInto } from "#app/join/join-notices.tsx";
import { identityOf } from "#app/patients/identity-of.ts";
import { RecordEvent } from "#app/record/form-registry.tsx";
import { HowItStands } from "#app/record/how-it-stands.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { mayRecord, patientFormOf, slugOf } from "#app/record/procedures.ts";
import { namesOfStaff } from "#app/staff/names-of-staff.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { numberedTubes } from "#shared/record/numbered-tubes.ts";
import { actLabels } from "#shared/words/acts.ts";

export const metadata: Metadata = { title: "Record - Dwellbook" };

type RecordPatientPageProps = { readonly params: Promise<{ readonly id: string; readonly act: string }> };

/** One form about a patient: a tube, what bears on the tubes, a death. */
export default async function RecordPatientPage({ params }: RecordPatientPageProps): Promise<ReactNode> {
  const { id: patientId, act } = await params;
  const kind = patientFormOf(act);
  if (kind === undefined) notFound();
  const { api, frame, person, today } = await signedIn();
  const { patient, state, steps, story, joined } = await orNotFound(api.patient.view({ patientId }));
  if (joined.into !== null)
    return (
      <PageFrame frame={frame} heading={actLabels[kind]} identity={identityOf(patient, null)}>
        <JoinedInto into={joined.into} />
      </PageFrame>
    );
  const nameOf = namesOfStaff(await api.staff.list());
  const leaveTo = `/patients/${patientId}`;
  return (
    <PageFrame frame={frame} heading={actLabels[kind]} identity={identityOf(patient, null)}>
      <HowItStands
        steps={steps.map(({ step }) => step)}
        none={
          state.tubes.length === 0 ? "No tube is recorded yet." : "Every record has ended: nothing is open."
        }
        {...{ story, today, nameOf }}
      />
      {mayRecord(person, kind) ? (
        <RecordEvent
          kind={kind}
          patientId={patientId}
          tubeId={null}
          context={{
            ...(await api.record.beside()),
            tube: null,
            tubes: numberedTubes(state.tubes),
            opens: { tubeId: "", number: 0 },
          }}
          lastSeen={state.lastSeq}
          draft={await api.draft.load({ form: `record.${slugOf(kind)}`, subject: patientId })}
          leaveTo={leaveTo}
          amends={null}
          passage={null}
        />
      ) : (
        <NotForYou back={leaveTo} />
      )}
    </PageFrame>
  );
}
