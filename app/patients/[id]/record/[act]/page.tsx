import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { JoinedInto } from "#app/join/join-notices.tsx";
import { identityOf } from "#app/patients/identity-of.ts";
import styles from "#app/patients/patient.module.css";
import { type Meant, RecordsMeant, recordsMeant } from "#app/patients/records-meant.tsx";
import { RecordEvent } from "#app/record/form-registry.tsx";
import { HowItStands } from "#app/record/how-it-stands.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { mayRecord, patientFormOf, slugOf } from "#app/record/procedures.ts";
import { namesOfStaff } from "#app/staff/names-of-staff.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import type { Texts } from "#shared/record/field-spec.ts";
import { numberedTubes } from "#shared/record/numbered-tubes.ts";
import type { PatientTubes } from "#shared/tube/state.ts";
import { actLabels } from "#shared/words/acts.ts";

export const metadata: Metadata = { title: "Record - Dwellbook" };

type RecordPatientPageProps = {
  readonly params: Promise<{ readonly id: string; readonly act: string }>;
  readonly searchParams: Promise<{ readonly about?: string | string[] }>;
};

/** What does not agree: as the address says, else what was asked first and is open. */
function askedAbout(state: PatientTubes, about: string | string[] | undefined): Texts {
  const asked = state.reconciles.find((each) => each.about === about) ?? state.reconciles[0];
  return asked === undefined ? {} : { about: asked.about };
}

/** One form about a patient: a tube, what bears on the tubes, a death. */
export default async function RecordPatientPage(props: RecordPatientPageProps): Promise<ReactNode> {
  const { id: patientId, act } = await props.params;
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
  const begun = kind === "reconciled" ? askedAbout(state, (await props.searchParams).about) : {};
  const isTwo = begun.about === "two records of one patient";
  const meant = isTwo ? await recordsMeant({ api, person, patientId, state }) : null;
  return (
    <PageFrame frame={frame} heading={actLabels[kind]} identity={identityOf(patient, null)}>
      <HowItStands
        steps={steps.map(({ step }) => step)}
        none={
          state.tubes.length === 0 ? "No tube is recorded yet." : "Every record has ended: nothing is open."
        }
        {...{ story, today, nameOf }}
      />
      {meant !== null && <TwoRecords meant={meant} patientId={patientId} />}
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
          begun={begun}
          amends={null}
          plan={null}
        />
      ) : (
        <NotForYou back={leaveTo} />
      )}
    </PageFrame>
  );
}

/** Two records of one person are settled by joining them; the form beneath is for the other ways in which it ends. */
function TwoRecords({ meant, patientId }: { readonly meant: Meant; readonly patientId: string }): ReactNode {
  return (
    <>
      <section className={styles.section}>
        <h2>If both are one person's, join them</h2>
        <RecordsMeant meant={meant} patientId={patientId} />
      </section>
      <section className={styles.section}>
        <h2>If they are not, record how it was found</h2>
      </section>
    </>
  );
}
