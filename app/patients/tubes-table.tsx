import type { ReactNode } from "react";
import type { ListLine } from "#app/lists/list-line.ts";
import { behind, weightOf } from "#app/lists/standing.ts";
import { RecentKey, RecentOutput, recentHead } from "#app/output/recent-output.tsx";
import type { PatientPage } from "#app/patients/patient-page.ts";
import { formOfStep } from "#app/record/offered.ts";
import { mayRecord, tubeFormHref } from "#app/record/procedures.ts";
import { stepPage } from "#app/record/step-page.ts";
import { DwellStrip } from "#app/strip/dwell-strip.tsx";
import { AxisHead, cropStyle } from "#app/strip/strip-defs.tsx";
import { stripFactsOf } from "#app/strip/tall-facts.ts";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { Now } from "#app/ui/now.tsx";
import { Soft } from "#app/ui/soft.tsx";
import type { Person } from "#shared/access/person.ts";
import type { Day } from "#shared/day/day.ts";
import type { ChartFacts } from "#shared/output/chart/chart-facts.ts";
import { titlesOf, tubeDetail, tubeName } from "#shared/tube/name.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { actLabels } from "#shared/words/acts.ts";
import { ownerText, standingBesideName, stepNames } from "#shared/words/steps.ts";
import styles from "./tubes-table.module.css";

type TubesTableProps = Pick<PatientPage, "state" | "steps" | "charts"> & {
  readonly today: Day;
  readonly person: Person;
};

type Row = { readonly tube: TubeState; readonly lines: readonly ListLine[]; readonly next: ListLine };

/** Every tube whose record has not ended, by what it needs first, on one axis. */
export function TubesTable({ state, steps, charts, today, person }: TubesTableProps): ReactNode {
  const rows = state.tubes
    .flatMap((tube): Row[] => {
      const lines = steps.filter(({ step }) => step.tubeId === tube.id);
      const [next] = lines;
      return next === undefined ? [] : [{ tube, lines, next }];
    })
    .toSorted((a, b) => steps.indexOf(a.next) - steps.indexOf(b.next));
  const titles = titlesOf(state.tubes);
  const anyOutput = rows.some(({ tube }) => charts[tube.id] !== undefined);
  if (rows.length === 0) return <p className={styles.none}>No tube is in by this record.</p>;
  return (
    <>
      <table className={styles.table} style={cropStyle}>
        <caption className={styles.unseen}>Tubes whose record has not ended</caption>
        <thead className={styles.head}>
          <tr>
            <th scope="col">Tube</th>
            <th scope="col" className={styles.axis}>
              <span className={styles.unseen}>Dwell and window, in days from today</span>
              <AxisHead />
            </th>
            {anyOutput && (
              <th scope="col" className={styles.output}>
                {recentHead}
              </th>
            )}
            <th scope="col">Next step</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <TubeRow
              key={row.tube.id}
              row={row}
              chart={anyOutput ? (charts[row.tube.id] ?? null) : undefined}
              title={titles.get(row.tube.id) ?? ""}
              today={today}
              person={person}
            />
          ))}
        </tbody>
      </table>
      {anyOutput && <RecentKey />}
    </>
  );
}

type TubeRowProps = {
  readonly row: Row;
  /** Undefined where no tube of the table has output, null of one that has none beside others. */
  readonly chart: ChartFacts | null | undefined;
  readonly title: string;
  readonly today: Day;
  readonly person: Person;
};

function TubeRow({ row, chart, title, today, person }: TubeRowProps): ReactNode {
  const { tube, next, lines } = row;
  const form = formOfStep[next.step.kind];
  const page = stepPage(next.step, next.patient.id);
  return (
    <tr className={styles.row}>
      <th scope="row">
        <a className={styles.name} href={`/tubes/${tube.id}`}>
          {title}
        </a>
        <br />
        {tubeDetail(tube)}
      </th>
      <td className={styles.strip}>
        <DwellStrip
          title={tubeName(tube)}
          facts={stripFactsOf(
            tube,
            lines.map(({ step }) => step),
            today,
          )}
        />
      </td>
      {chart !== undefined && (
        <td className={styles.output}>
          {chart !== null && <RecentOutput of={tubeName(tube)} facts={chart} />}
        </td>
      )}
      <td>
        <p>
          <b>{stepNames[next.step.kind]}</b> <Standing line={next} today={today} />
        </p>
        <p>
          Owner: {ownerText(next.owner)}.
          {lines.length > 1 && (
            <>
              {" "}
              <a href={`/tubes/${tube.id}`}>{lines.length - 1} more open</a>
            </>
          )}{" "}
          {page !== null && (
            <a href={page.href} data-screen-only>
              {page.word}
            </a>
          )}
          {page === null && form !== null && mayRecord(person, form) && (
            <a href={tubeFormHref(tube.id, form)} data-screen-only>
              {actLabels[form]}
            </a>
          )}
        </p>
      </td>
    </tr>
  );
}

/** Where the next step stands, in the weight that it deserves, and the dates behind it. */
function Standing({ line, today }: { readonly line: ListLine; readonly today: Day }): ReactNode {
  const standing = standingBesideName(line.step, today);
  return (
    <>
      {weightOf(line, today) === "now" ? <Now>{standing}</Now> : standing} <Soft>{behind(line, today)}</Soft>{" "}
      {line.row === "example" && <ExampleMark />}
    </>
  );
}
