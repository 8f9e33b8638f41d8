import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";

import { CriterionReasons, CriterionVerdict } from "#app/output/criterion-verdict.tsx";
import { OutputChart } from "#app/output/output-chart.tsx";

import { identityOf } from "#app/patients/identity-of.ts";
import { ActButton } from "#app/record/act-links.tsx";
import { mayRecord, tubeFormHref } from "#app/record/procedures.ts";
import { DecisionChanged } from "#app/review/decision-changed.tsx";
import { DecisionOnPaper } from "#app/review/decision-on-paper.tsx";
import { FluidTestsTable } from "#app/review/fluid-tests.tsx";
import { InQueue } from "#app/review/in-queue.tsx";
import { NeedsSomeone } from "#app/review/needs-someone.tsx";
import { OthersOnIt } from "#app/review/others-on-it.tsx";
import { Questions } from "#app/review/questions.tsx";
import { ReadBeside } from "#app/review/read-beside.tsx";
import styles from "#app/review/review.module.css";
import { WEEK, Week } from "#app/review/week.tsx";
import { namesOfStaff } from "#app/staff/names-of-staff.ts";
import { Steps } from "#app/tubes/steps.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { printInstant } from "#shared/day/print-day.ts";
import { frameOf } from "#shared/output/chart/chart-frame.ts";
import { tubeName } from "#shared/tube/name.ts";
import { actLabels } from "#shared/words/acts.ts";

export const metadata: Metadata = { title: "Review - Dwellbook" };

type ReviewPageProps = { readonly params: Promise<{ readonly id: string }> };

/** One tube in the order of the physician's questions, with what a decision would rest on. It decides nothing. */
export default async function ReviewPage({ params }: ReviewPageProps): Promise<ReactNode> {
  const { id: tubeId } = await params;
  const { api, frame, person, today } = await signedIn();
  const view = await orNotFound(api.tube.view({ tubeId }));
  const [output, urine, review, place] = await Promise.all([
    api.tube.output({ tubeId }),
    api.tube.urine({ tubeId }),
    api.review.view({ tubeId }),
    api.review.place({ tubeId }),
  ]);
  const nameOf = namesOfStaff(await api.staff.list());
  const { tube, patient } = view;
  return (
    <PageFrame
      frame={frame}
      heading="What is to be decided of this tube?"
      lede={
        <>
          <a href={`/tubes/${tubeId}`} data-screen-only>
            All of this tube
          </a>
          <span data-paper-only>
            As of {printInstant(review.asOf, view.zone)}, printed by {person.fullName}
          </span>
        </>
      }
      identity={identityOf(patient, tubeName(tube))}
      paper="one sheet"
    >
      <div className={styles.acts}>
        {tube.status !== "ended" && mayRecord(person, "review decided") && (
          <ActButton href={tubeFormHref(tubeId, "review decided")}>{actLabels["review decided"]}</ActButton>
        )}
        <InQueue place={place} />
      </div>
      <OthersOnIt others={review.others} zone={view.zone} nameOf={nameOf} />
      <NeedsSomeone steps={view.steps} />
      <DecisionChanged review={review} zone={view.zone} />
      <div className={styles.page}>
        <section>
          <Questions view={view} nameOf={nameOf} />
        </section>
        <section className={styles.output}>
          {output.hasOutput ? (
            <>
              <div className={styles.week}>
                <CriterionVerdict output={output} />
              </div>
              <div className={styles.chart} data-paper-only>
                <OutputChart of={tubeName(tube)} facts={output.chart} frame={frameOf([output.chart], WEEK)} />
              </div>
              <div className={styles.days}>
                <Week output={output} />
                <ReadBeside beside={review.beside} urine={urine} />
              </div>
              <div className={styles.week}>
                <CriterionReasons output={output} />
              </div>
              <p className={styles.soft} data-screen-only>
                <a href={`/tubes/${tubeId}/output`}>All days and readings, the chart and why</a>
              </p>
            </>
          ) : (
            <p>It lies wholly inside and has no output. Only its date matters.</p>
          )}
        </section>
        <section className={styles.wide}>
          <FluidTestsTable tube={tube} />
          <DecisionOnPaper {...{ view, review, nameOf }} />
          <div data-screen-only>
            <Steps steps={view.steps} tube={tube} patientId={patient.id} {...{ today, person, nameOf }} />
          </div>
        </section>
      </div>
    </PageFrame>
  );
}
