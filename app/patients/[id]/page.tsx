import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { FactList } from "#app/facts/fact-list.tsx";
import { raiseHref, tubeOutHref } from "#app/flags/flag-pages.ts";
import { OpenFlags } from "#app/flags/open-flags.tsx";
import { AlsoRecordedAs, JoinedInto } from "#app/join/join-notices.tsx";
import { ClinicalTable } from "#app/patients/clinical-table.tsx";
import { contactRows } from "#app/patients/contact-rows.ts";
import { EndedTubes } from "#app/patients/ended-tubes.tsx";
import { identityOf } from "#app/patients/identity-of.ts";
import { KnownOfPatient } from "#app/patients/known-of-patient.tsx";
import styles from "#app/patients/patient.module.css";
import { PatientSteps } from "#app/patients/patient-steps.tsx";
import { recordsMeant } from "#app/patients/records-meant.tsx";
import { TubesTable } from "#app/patients/tubes-table.tsx";
import { ActLinks } from "#app/record/act-links.tsx";
import { patientForms } from "#app/record/offered.ts";
import { patientFormHref } from "#app/record/procedures.ts";
import { callHref } from "#app/record/step-page.ts";
import { namesOfStaff } from "#app/staff/names-of-staff.ts";
import { Story } from "#app/story/story.tsx";
import { Now } from "#app/ui/now.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { VisitsOf } from "#app/visit/visits-of.tsx";
import { may } from "#shared/access/may.ts";
import { printInstant, printWhen } from "#shared/day/print-day.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { titlesOf } from "#shared/tube/name.ts";

export const metadata: Metadata = { title: "Patient - Dwellbook" };

type PatientPageProps = { readonly params: Promise<{ readonly id: string }> };

/** One patient: what is in place, what comes next, what bears on it, how they are reached, what was recorded. */
export default async function PatientPage({ params }: PatientPageProps): Promise<ReactNode> {
  const { id: patientId } = await params;
  const { api, frame, person, today } = await signedIn();
  const { patient, state, steps, charts, story, zone, joined } = await orNotFound(
    api.patient.view({ patientId }),
  );
  if (joined.into !== null)
    return (
      <PageFrame
        frame={frame}
        heading="Where is this person's record?"
        here="Patients"
        identity={identityOf(patient, null)}
      >
        <JoinedInto into={joined.into} />
        <section className={styles.section}>
          <h2>How to reach, as this record had it</h2>
          <FactList rows={contactRows({ ...patient, contact: patient.contact as Contact })} />
        </section>
      </PageFrame>
    );
  if (patient.withdrawnAt !== null)
    return (
      <PageFrame
        frame={frame}
        heading="What became of this record?"
        here="Patients"
        identity={identityOf(patient, null)}
      >
        <p role="status">
          The registration was undone {printInstant(patient.withdrawnAt, zone)}. Nobody is followed under it,
          it takes no entries, and its numbers are free again.
        </p>
      </PageFrame>
    );
  const nameOf = namesOfStaff(await api.staff.list());
  const names = titlesOf(state.tubes);
  const meant = await recordsMeant({ api, person, patientId, state });
  return (
    <PageFrame
      frame={frame}
      heading="What is in place, and what comes next?"
      here="Patients"
      identity={identityOf(patient, null)}
    >
      <AlsoRecordedAs from={joined.from} />
      {state.died !== null && (
        <p className={styles.died}>
          <Now>Died {printWhen(state.died.when)}.</Now> Every record has ended and no call is due.
        </p>
      )}
      <OpenFlags
        steps={steps.map(({ step }) => step)}
        patientId={patientId}
        nameOf={(tubeId) => names.get(tubeId)}
      />
      <TubesTable {...{ state, steps, charts, today, person }} />
      <VisitsOf patientId={patientId} state={state} tubeId={null} />
      <PatientSteps {...{ state, steps, patientId, today, person, meant }} />
      <div className={styles.acts}>
        <ActLinks
          forms={patientForms(state)}
          hrefOf={(form) => patientFormHref(patientId, form)}
          person={person}
          label="What to record of this patient"
        />
        {state.tubes.some(({ status }) => status === "in") && (
          <a href={tubeOutHref(patientId)} data-screen-only>
            A tube is out
          </a>
        )}
        <a href={raiseHref(patientId)} data-screen-only>
          Raise a red flag
        </a>
        <a href={callHref(patientId)} data-screen-only>
          Call this patient
        </a>
        {may(person, "patient.correct") && (
          <a href={`/patients/${patientId}/identity`} data-screen-only>
            Correct identity or contact
          </a>
        )}
        {may(person, "record.joined") && (
          <a href={`/patients/${patientId}/join`} data-screen-only>
            Join another record of this person
          </a>
        )}
      </div>
      <div className={styles.columns}>
        <section>
          <h2>What bears on the tubes</h2>
          <KnownOfPatient state={state} />
          <div className={styles.clinical}>
            <ClinicalTable state={state.clinical} today={today} />
          </div>
        </section>
        <section>
          <h2>How to reach</h2>
          <FactList rows={contactRows({ ...patient, contact: patient.contact as Contact })} />
        </section>
      </div>
      <EndedTubes tubes={state.tubes} />
      <section className={styles.section} id="story">
        <Story
          {...{ story, patientId, zone, nameOf, person }}
          tubeName={(tubeId) => names.get(tubeId) ?? "a tube without a record"}
        />
      </section>
    </PageFrame>
  );
}
