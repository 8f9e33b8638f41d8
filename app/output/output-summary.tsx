import type { ReactNode } from "react";
import { CriterionVerdict } from "#app/output/criterion-verdict.tsx";
import { completeWords, netWords, rateWords } from "#app/output/net-day-words.ts";
import { SmallChart } from "#app/output/small-chart.tsx";
import type { OutputPage, TubePage } from "#app/tubes/tube-page.ts";
import { printDay } from "#shared/day/print-day.ts";
import { whatAlarmsOf } from "#shared/words/output.ts";
import styles from "./output.module.css";

type OutputSummaryProps = {
  readonly tube: Pick<TubePage["tube"], "id" | "expectedFluid">;
  readonly of: string;
  readonly output: OutputPage;
  readonly mayLog: boolean;
};

const SHOWN = 3;

/** The last days of net output, and where to see and log more. A tube wholly inside has none. */
export function OutputSummary({ tube, of, output, mayLog }: OutputSummaryProps): ReactNode {
  const days = output.output.days.slice(-SHOWN).toReversed();
  return (
    <section className={styles.section}>
      <h2>Output</h2>
      {output.hasOutput ? (
        <>
          <p className={styles.caution}>{whatAlarmsOf(tube)}</p>
          <CriterionVerdict output={output} />
          <SmallChart of={of} facts={output.chart} />
          {days.length === 0 ? (
            <p>No reading yet.</p>
          ) : (
            <table className={styles.days}>
              <caption>Net, the last days</caption>
              <tbody>
                {days.map((day) => (
                  <tr key={day.from}>
                    <th scope="row">{printDay(day.day)}</th>
                    <td>{netWords(day)}</td>
                    <td>{rateWords(day)}</td>
                    <td>{completeWords(day)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          )}
          <p data-screen-only>
            <a href={`/tubes/${tube.id}/output`}>All days and readings</a>
            {mayLog && (
              <>
                {" · "}
                <a href={`/tubes/${tube.id}/record/reading`}>Log an emptying</a>
                {" · "}
                <a href={`/tubes/${tube.id}/record/diary`}>Log a diary</a>
              </>
            )}
          </p>
        </>
      ) : (
        <p>It lies wholly inside and has no output.</p>
      )}
    </section>
  );
}
