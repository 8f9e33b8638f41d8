import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { ExchangeAnswers } from "#app/bore/exchange-answers.tsx";
import { identityOf } from "#app/patients/identity-of.ts";
import { planAnswer } from "#app/tubes/plan-answer.ts";
import { TableTop } from "#app/tubes/table-top.tsx";
import styles from "#app/tubes/tube.module.css";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { printDay } from "#shared/day/print-day.ts";
import { tubeName } from "#shared/tube/name.ts";
import { changedLine } from "#shared/words/exchange-plan.ts";

export const metadata: Metadata = { title: "Table-top list - Dwellbook" };

type TableTopPageProps = { readonly params: Promise<{ readonly id: string }> };

/** What has to be on the table for a planned exchange, and what the recorded facts say of it: a page to print. */
export default async function TableTopPage({ params }: TableTopPageProps): Promise<ReactNode> {
  const { id: tubeId } = await params;
  const { api, frame } = await signedIn();
  const view = await orNotFound(api.tube.view({ tubeId }));
  const { tube, patient, approved } = view;
  const { plannedExchange: planned } = tube;
  const said = planAnswer(view);
  const changed = said === null ? null : changedLine(said.changed);
  return (
    <PageFrame
      frame={frame}
      heading="What must be on the table?"
      lede={<a href={`/tubes/${tubeId}`}>All of this tube</a>}
      identity={identityOf(patient, tubeName(tube))}
    >
      {planned === null || said === null ? (
        <p>No exchange is planned for this tube, so nothing can be listed.</p>
      ) : (
        <>
          <p>
            {planned.on === null ? "No day is set." : `Planned for ${printDay(planned.on)}.`}{" "}
            {approved === null && <ExampleMark />}
          </p>
          {changed !== null && <p className={styles.caution}>{changed}</p>}
          <TableTop planned={planned} answer={said.answer} />
          <h2>What the recorded facts say</h2>
          <ExchangeAnswers answer={said.answer} paper />
          <p className={styles.caution}>
            By recorded facts only: what is crusted, kinked or wrongly labelled is not in them. Going on is
            the operator's judgement.
          </p>
        </>
      )}
    </PageFrame>
  );
}
