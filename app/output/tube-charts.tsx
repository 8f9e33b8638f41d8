import type { ReactNode } from "react";
import { CHART_DAYS, OutputChart } from "#app/output/output-chart.tsx";
import type { ChartFacts } from "#shared/output/chart/chart-facts.ts";
import { frameWithin, spanOf } from "#shared/output/chart/chart-frame.ts";
import styles from "./chart.module.css";

export type TubeChart = {
  readonly tubeId: string;
  readonly of: string;
  readonly facts: ChartFacts;
  /** What is said of it where others stand beside it. */
  readonly says?: readonly string[];
};

type TubeChartsProps = {
  /** The tube asked for, and those of its cavity: on the same axes, since what one does not drain the other may. */
  readonly own: readonly TubeChart[];
  /** Linked ones whose output means something else: on the same axis of time, each as high as its own bars. */
  readonly linked: readonly TubeChart[];
};

/** A tube's chart, and beneath it those that are read with it. */
export function TubeCharts({ own, linked }: TubeChartsProps): ReactNode {
  const all = [...own, ...linked];
  const span = spanOf(
    all.map(({ facts }) => facts),
    CHART_DAYS,
  );
  const ownFacts = own.map(({ facts }) => facts);
  return all.map((chart, index) => (
    <section
      key={chart.tubeId}
      className={all.length > 1 ? styles.one : undefined}
      aria-label={`Chart of ${chart.of}`}
    >
      {all.length > 1 && <h2>{chart.of}</h2>}
      {(chart.says ?? []).map((line) => (
        <p key={line} className={styles.meaning}>
          {line}
        </p>
      ))}
      {all.length > 1 && chart.facts.span === null && <p>No reading yet.</p>}
      <OutputChart
        of={chart.of}
        facts={chart.facts}
        frame={span && frameWithin(index < own.length ? ownFacts : [chart.facts], span)}
        keyed={index === 0}
      />
    </section>
  ));
}
