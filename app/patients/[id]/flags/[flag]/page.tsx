import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { FlagFacts } from "#app/flags/flag-facts.tsx";
import { type FlagAct, FlagForm } from "#app/flags/flag-form.tsx";
import { type FlagPage, flagHref } from "#app/flags/flag-pages.ts";
import styles from "#app/flags/flags.module.css";
import { identityOf } from "#app/patients/identity-of.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { notForEmergencies } from "#shared/words/red-flag-page.ts";

export const metadata: Metadata = { title: "Red flag - Dwellbook" };

type OneFlagPageProps = {
  readonly params: Promise<{ readonly id: string; readonly flag: string }>;
  readonly searchParams: Promise<{ readonly again?: string | string[] }>;
};

/** It is handed over first; once somebody has it, what was done closes it, or another person takes it. */
function actOf({ handed, done }: FlagPage, again: boolean): FlagAct | null {
  if (done !== null) return null;
  return handed.length === 0 || again ? "handed" : "done";
}

/** One red flag: what was told and what holds until somebody is reached, who has it, what was done. */
export default async function OneFlagPage({ params, searchParams }: OneFlagPageProps): Promise<ReactNode> {
  const { id: patientId, flag: flagId } = await params;
  const { api, frame } = await signedIn();
  const view = await orNotFound(api.flag.view({ patientId, flagId }));
  const { patient, flag, today, now, zone, lastSeen } = view;
  const act = actOf(view, (await searchParams).again !== undefined);
  const href = flagHref(patientId, flagId);
  const headings = { handed: "Who has it now?", done: "What was done?" };
  return (
    <PageFrame
      frame={frame}
      heading={view.done === null ? "Who has this red flag?" : "What was done about this red flag?"}
      lede={<a href={`/patients/${patientId}`}>All of this patient</a>}
      identity={identityOf(patient, null)}
    >
      <p className={styles.caution}>{notForEmergencies}</p>
      <FlagFacts view={view} />
      {act !== null && (
        <section key={act} className={styles.next}>
          <h2>{headings[act]}</h2>
          <FlagForm
            act={act}
            patientId={patientId}
            flagId={flagId}
            context={{ today, now, zone, told: flag }}
            lastSeen={lastSeen}
            draft={await api.draft.load({ form: `flag.${act}`, subject: flagId })}
          />
        </section>
      )}
      {act === "done" && (
        <p data-screen-only>
          <a href={`${href}?again=yes`}>Another person has it now: hand it over again</a>
        </p>
      )}
    </PageFrame>
  );
}
