import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { FactList } from "#app/facts/fact-list.tsx";
import { raiseHref, tubeOutHref } from "#app/flags/flag-pages.ts";
import { OpenFlags } from "#app/flags/open-flags.tsx";
import { OutputSummary } from "#app/output/output-summary.tsx";
import { identityOf } from "#app/patients/identity-of.ts";
import { ActLinks, LinkLine } from "#app/record/act-links.tsx";
import { offeredForms } from "#app/record/offered.ts";
import { tubeFormHref } from "#app/record/procedures.ts";
import { callHref } from "#app/record/step-page.ts";
import { FluidTestsTable } from "#app/review/fluid-tests.tsx";
import { namesOfStaff } from "#app/staff/names-of-staff.ts";
import { Story } from "#app/story/story.tsx";
import { TallStrip } from "#app/strip/tall-strip.tsx";
import { Clocks } from "#app/tubes/clocks.tsx";
import { MayBeOut } from "#app/tubes/may-be-out.tsx";
import { Papers } from "#app/tubes/papers.tsx";
import { PlannedExchangeOf } from "#app/tubes/planned-exchange.tsx";
import { ProposedDates } from "#app/tubes/proposed-dates.tsx";
import { Steps } from "#app/tubes/steps.tsx";
import styles from "#app/tubes/tube.module.css";
import { factsOfTube } from "#app/tubes/tube-facts.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { VisitsOf } from "#app/visit/visits-of.tsx";
import { may } from "#shared/access/may.ts";
import { tubeName } from "#shared/tube/name.ts";

export const metadata: Metadata = { title: "Tube - Dwellbook" };

type TubePageProps = { readonly params: Promise<{ readonly id: string }> };

/** One tube: what comes next and why, its clocks, what is known of it, its output, its story. */
export default async function TubePage({ params }: TubePageProps): Promise<ReactNode> {
  const { id: tubeId } = await params;
  const { api, frame, person, today } = await signedIn();
  const view = await orNotFound(api.tube.view({ tubeId }));
  const output = await api.tube.output({ tubeId });
  const nameOf = namesOfStaff(await api.staff.list());
  const { tube, patient } = view;
  return (
    <PageFrame
      frame={frame}
      heading="What comes next for this tube, and why?"
      lede={<a href={`/patients/${patient.id}`}>All of this patient</a>}
      identity={identityOf(patient, tubeName(tube))}
    >
      <OpenFlags
        steps={view.flags}
        patientId={patient.id}
        nameOf={(id) => (id === tubeId ? "This tube" : undefined)}
      />
      <MayBeOut view={view} person={person} />
      <ProposedDates view={view} person={person} />
      <div className={styles.opening}>
        <Steps steps={view.steps} tube={tube} patientId={patient.id} {...{ today, person, nameOf }} />
        <Clocks view={view} />
      </div>
      <VisitsOf patientId={patient.id} state={view.visiting} tubeId={tubeId} />
      <p data-screen-only>
        <a href={callHref(patient.id)}>Call this patient</a>
      </p>
      <section className={styles.section} aria-label="Dwell">
        <TallStrip tube={tube} steps={view.steps} today={today} />
      </section>
      <section className={styles.section} data-screen-only>
        <h2>Record</h2>
        <dl>
          {offeredForms(tube).map(({ word, forms }) => (
            <div key={word} className={styles.offeredRow}>
              <dt>{word}</dt>
              <dd>
                <ActLinks
                  forms={forms}
                  hrefOf={(form) => tubeFormHref(tubeId, form)}
                  person={person}
                  label={word}
                />
              </dd>
            </div>
          ))}
        </dl>
        <LinkLine
          label="What needs somebody"
          links={[
            ...(tube.status === "in"
              ? [{ href: tubeOutHref(patient.id, tubeId), word: "It is out, or partly out" }]
              : []),
            { href: `${raiseHref(patient.id)}?tube=${tubeId}`, word: "Raise a red flag" },
          ]}
        />
      </section>
      <PlannedExchangeOf view={view} />
      <Papers tube={tube} />
      <OutputSummary
        tube={tube}
        of={tubeName(tube)}
        output={output}
        mayLog={may(person, "reading.recorded")}
      />
      {Object.keys(tube.fluidTests).length > 0 && (
        <section className={styles.section} aria-label="Fluid tests">
          <FluidTestsTable tube={tube} />
        </section>
      )}
      <section className={styles.section}>
        <h2>What is known of it</h2>
        <FactList rows={factsOfTube(tube)} />
      </section>
      <section className={styles.section} id="story">
        <Story story={view.story} patientId={patient.id} zone={view.zone} nameOf={nameOf} person={person} />
      </section>
    </PageFrame>
  );
}
