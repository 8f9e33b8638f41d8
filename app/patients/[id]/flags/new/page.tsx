import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import styles from "#app/flags/flags.module.css";
import { RaiseForm } from "#app/flags/raise-form.tsx";
import { identityOf } from "#app/patients/identity-of.ts";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { emergencyCaution } from "#shared/words/home-paper.ts";
import { bearsOnFlag, notForEmergencies } from "#shared/words/red-flag-page.ts";

export const metadata: Metadata = { title: "Red flag - Dwellbook" };

type RaisePageProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<{ readonly tube?: string | string[] }>;
};

/** A red flag of a patient or of one tube: what was told, by which row, and who has it. */
export default async function RaisePage({ params, searchParams }: RaisePageProps): Promise<ReactNode> {
  const { id: patientId } = await params;
  const { api, frame } = await signedIn();
  const { patient, context, table, conditions, lastSeen } = await orNotFound(api.flag.raising({ patientId }));
  const { tube: tubeId } = await searchParams;
  const tube = context.tubes.find(({ id }) => id === tubeId);
  return (
    <PageFrame frame={frame} heading="Raise a red flag" identity={identityOf(patient, null)}>
      <p className={styles.caution}>
        {notForEmergencies} {emergencyCaution}
      </p>
      <p className={styles.said}>
        Rows of version {table.version} of the clinic's table. {table.approved === null && <ExampleMark />}{" "}
        {bearsOnFlag(conditions)
          .map(({ word, says }) => `${word}: ${says}`)
          .join("; ")}
        .
      </p>
      <RaiseForm
        patientId={patientId}
        context={context}
        lastSeen={lastSeen}
        draft={await api.draft.load({ form: "flag.raised", subject: patientId })}
        begun={tube === undefined ? {} : { of: String(tube.number) }}
      />
    </PageFrame>
  );
}
