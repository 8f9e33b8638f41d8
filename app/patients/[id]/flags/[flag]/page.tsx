import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { FlagFacts } from "#app/flags/flag-facts.tsx";
import type { FlagAct } from "#app/flags/flag-form.tsx";
import { flagHref } from "#app/flags/flag-pages.ts";
import styles from "#app/flags/flags.module.css";
import { HandThenDone } from "#app/flags/hand-then-done.tsx";
import { identityOf } from "#app/patients/identity-of.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { notForEmergencies } from "#shared/words/red-flag-page.ts";

export const metadata: Metadata = { title: "Red flag - Dwellbook" };

type OneFlagPageProps = {
  readonly params: Promise<{ readonly id: string; readonly flag: string }>;
  readonly searchParams: Promise<{ readonly again?: string | string[] }>;
};

/** One red flag: what was told and what holds until somebody is reached, who has it, what was done. */
export default async function OneFlagPage({ params, searchParams }: OneFlagPageProps): Promise<ReactNode> {
  const { id: patientId, flag: flagId } = await params;
  const { api, frame } = await signedIn();
  const view = await orNotFound(api.flag.view({ patientId, flagId }));
  const { patient, flag, handed, done, today, now, zone, lastSeen } = view;
  const again = (await searchParams).again !== undefined;
  const draft = (act: FlagAct) => api.draft.load({ form: `flag.${act}`, subject: flagId });
  return (
    <PageFrame
      frame={frame}
      heading={done === null ? "Who has this red flag?" : "What was done about this red flag?"}
      lede={<a href={`/patients/${patientId}`}>All of this patient</a>}
      identity={identityOf(patient, null)}
    >
      <p className={styles.caution}>{notForEmergencies}</p>
      <FlagFacts view={view} />
      <HandThenDone
        key={again ? "again" : "once"}
        patientId={patientId}
        flagId={flagId}
        context={{ today, now, zone, told: flag }}
        lastSeen={lastSeen}
        drafts={{ handed: await draft("handed"), done: await draft("done") }}
        handed={handed.length}
        isDone={done !== null}
        again={again}
      />
      {handed.length > 0 && done === null && !again && (
        <p data-screen-only>
          <a href={`${flagHref(patientId, flagId)}?again=yes`}>
            Another person has it now: hand it over again
          </a>
        </p>
      )}
    </PageFrame>
  );
}
