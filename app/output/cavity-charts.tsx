import type { ReactNode } from "react";
import { CHART_DAYS, OutputChart } from "#app/output/output-chart.tsx";
import type { ChartFacts } from "#shared/output/chart/chart-facts.ts";
import { frameOf } from "#shared/output/chart/chart-frame.ts";
import styles from "./chart.module.css";

export type TubeChart = { readonly tubeId: string; readonly of: string; readonly facts: ChartFacts };

/** Tubes of one cavity under one another, the one asked for first, on the same axes: what one does not drain the other may. */
export function CavityCharts({ charts }: { readonly charts: readonly TubeChart[] }): ReactNode {
  const facts = charts.map((chart) => chart.facts);
  const frame = frameOf(facts, CHART_DAYS);
  const several = charts.length > 1;
  return charts.map(({ tubeId, of, facts: own }, index) => (
    <section key={tubeId} className={several ? styles.one : undefined} aria-label={`Chart of ${of}`}>
      {several && <h2>{of}</h2>}
      {several && own.span === null && <p>No reading yet.</p>}
      <OutputChart of={of} facts={own} frame={frame} keyed={index === 0} />
    </section>
  ));
}
