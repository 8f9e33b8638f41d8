import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import styles from "#app/flags/flags.module.css";
import { identityOf } from "#app/patients/identity-of.ts";
import { patientFormHref } from "#app/record/procedures.ts";
import { TubeOutForm } from "#app/tube-out/tube-out-form.tsx";
import { Now } from "#app/ui/now.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { capital } from "#shared/words/capital.ts";
import { bleedingLine } from "#shared/words/exchange-plan.ts";
import { emergencyCaution, numberByHand, onCallRoute } from "#shared/words/home-paper.ts";
import { notForEmergencies } from "#shared/words/red-flag-page.ts";

export const metadata: Metadata = { title: "Tube out - Dwellbook" };

type TubeOutPageProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<{ readonly tube?: string | string[] }>;
};

/** A tube that is out or partly out, as it is told: what its rows say stands beside it, and nothing is decided here. */
export default async function TubeOutPage({ params, searchParams }: TubeOutPageProps): Promise<ReactNode> {
  const { id: patientId } = await params;
  const { api, frame } = await signedIn();
  const view = await orNotFound(api.flag.tubeOut({ patientId }));
  const { patient, context, outAlready, table, bleeding, clinic, lastSeen } = view;
  const asked = (await searchParams).tube;
  const chosen = context.tubes.find(({ id, status }) => id === asked && status === "in");
  const inside = context.tubes.filter(({ status }) => status === "in");
  return (
    <PageFrame
      frame={frame}
      heading="Which tube is out, and how is the patient?"
      lede={<a href={`/patients/${patientId}`}>All of this patient</a>}
      identity={identityOf(patient, null)}
    >
      <p className={styles.caution}>
        {notForEmergencies} {emergencyCaution}
      </p>
      <p className={styles.said}>
        Whom to ring: <bdi>{clinic.phone === "" ? numberByHand : `${clinic.name}, ${clinic.phone}`}</bdi>.{" "}
        {onCallRoute}
      </p>
      {outAlready.map(({ id, title, out }) => (
        <p key={id} className={styles.said}>
          <a href={`/tubes/${id}`}>{title}</a>: <Now>{out}</Now>
        </p>
      ))}
      {inside.length > 1 && (
        <p className={styles.said} data-screen-only>
          Not known which of them?{" "}
          <a href={patientFormHref(patientId, "reported out")}>Record that one of several is out</a>
        </p>
      )}
      <TubeOutForm
        patientId={patientId}
        context={context}
        isExample={table.approved === null}
        lastSeen={lastSeen}
        draft={await api.draft.load({ form: "flag.tube-out", subject: patientId })}
        begun={chosen === undefined ? {} : { tube: String(chosen.number) }}
      />
      {bleeding !== null && bleeding.rows.length > 0 && (
        <section className={styles.next}>
          <h2>Bleeding risk of a new access or a salvage</h2>
          <p>Both classes, for discussion: no hold is computed.</p>
          <ul>
            {bleeding.rows.map((row) => (
              <li key={row.class}>{bleedingLine(row)}</li>
            ))}
          </ul>
          {bleeding.accessAtRisk !== null && <p>{capital(bleeding.accessAtRisk)}</p>}
        </section>
      )}
    </PageFrame>
  );
}
