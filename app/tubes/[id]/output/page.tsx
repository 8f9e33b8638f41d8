import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { CriterionSection } from "#app/output/criterion-section.tsx";
import { NetDaysTable } from "#app/output/net-days-table.tsx";
import styles from "#app/output/output.module.css";
import { ReadingsTable } from "#app/output/readings-table.tsx";
import { type TubeChart, TubeCharts } from "#app/output/tube-charts.tsx";
import { UrineByRoute } from "#app/output/urine-by-route.tsx";
import { WhyBehind } from "#app/output/why-behind.tsx";
import { identityOf } from "#app/patients/identity-of.ts";
import { ActButton } from "#app/record/act-links.tsx";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { cavityOf } from "#shared/output/criterion/cavity.ts";
import { bileBeside } from "#shared/output/together/bile-beside.ts";
import { numberedName, tubeName } from "#shared/tube/name.ts";
import { problemSentence, whatAlarmsOf } from "#shared/words/output.ts";
import { besideWords, lowMeans } from "#shared/words/together.ts";

export const metadata: Metadata = { title: "Output - Dwellbook" };

type OutputPageProps = { readonly params: Promise<{ readonly id: string }> };

/** What one tube drained, net of flush, day by day. */
export default async function OutputPage({ params }: OutputPageProps): Promise<ReactNode> {
  const { id: tubeId } = await params;
  const { api, frame, person } = await signedIn();
  const view = await orNotFound(api.tube.view({ tubeId }));
  const { patient, tube } = view;
  const output = await api.tube.output({ tubeId });
  const ifUnchanged = may(person, "tube.ifUnchanged") ? await api.tube.ifUnchanged({ tubeId }) : null;
  const urine = await api.tube.urine({ tubeId });
  const chartOf = async (one: TubePage["tube"], says: readonly string[] = []): Promise<TubeChart> => ({
    tubeId: one.id,
    of: numberedName(one),
    facts: (await api.tube.output({ tubeId: one.id })).chart,
    says,
  });
  const mates = cavityOf(tube, view.others).mates.filter(({ status }) => status !== "ended");
  const mateCharts = await Promise.all(mates.map((mate) => chartOf(mate)));
  const beside = bileBeside(tube, view.others);
  const linked = await Promise.all(
    beside.map((one) => chartOf(one.tube, [besideWords(one), lowMeans(one.tube)])),
  );
  const own: readonly TubeChart[] = [
    {
      tubeId,
      of: mates.length + beside.length > 0 ? numberedName(tube) : tubeName(tube),
      facts: output.chart,
      says: beside.length > 0 ? [lowMeans(tube)] : [],
    },
    ...mateCharts,
  ];
  return (
    <PageFrame
      frame={frame}
      heading="What did it drain, net of flush?"
      lede={<a href={`/tubes/${tubeId}`}>All of this tube</a>}
      identity={identityOf(patient, tubeName(tube))}
    >
      <p className={styles.caution}>{whatAlarmsOf(tube)}</p>
      {output.hasOutput ? (
        <>
          {output.output.problems.length > 0 && (
            <ul className={styles.problems}>
              {output.output.problems.map((problem) => (
                <li key={`${problem.code} ${problem.readings.join(" ")}`}>
                  {problemSentence(problem, output.zone)}
                </li>
              ))}
            </ul>
          )}
          {may(person, "reading.recorded") && tube.status !== "ended" && (
            <p>
              <ActButton href={`/tubes/${tubeId}/record/reading`}>Log an emptying</ActButton>{" "}
              <a href={`/tubes/${tubeId}/record/diary`} data-screen-only>
                Log a diary
              </a>
            </p>
          )}
          <CriterionSection output={output} />
          <TubeCharts own={own} linked={linked} />
          {urine !== null && <UrineByRoute urine={urine} />}
          <div className={styles.section}>
            <NetDaysTable days={output.output.days} />
            <ReadingsTable tubeId={tubeId} output={output} person={person} />
          </div>
          <WhyBehind trend={output.trend} ifUnchanged={ifUnchanged} />
          <p className={styles.section}>
            Net is what was drained less the flush that was given, over the time between emptyings. Figures
            are as entered; meeting a number means only that: check patency, patient and imaging.
          </p>
        </>
      ) : (
        <p>This tube lies wholly inside and has no output. Only its date matters.</p>
      )}
    </PageFrame>
  );
}
