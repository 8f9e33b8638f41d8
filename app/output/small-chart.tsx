import { type ReactNode, useId } from "react";
import { Across, BarShape, BoxShape, Hatch } from "#app/output/chart-shapes.tsx";
import type { ChartFacts } from "#shared/output/chart/chart-facts.ts";
import { wholeDaysFrame } from "#shared/output/chart/chart-frame.ts";
import { drawChart } from "#shared/output/chart/draw-chart.ts";
import { RECENT_DAYS } from "#shared/output/chart/recent-chart.ts";
import { recentSummary } from "#shared/words/chart.ts";
import styles from "./chart.module.css";

type SmallChartProps = {
  readonly of: string;
  readonly facts: ChartFacts;
  /** As high as a line of a list. */
  readonly inList?: boolean;
};

/** The last two weeks without axes, with zero and the row's limit: for lists and summaries. */
export function SmallChart({ of, facts, inList = false }: SmallChartProps): ReactNode {
  const id = useId();
  const frame = wholeDaysFrame(facts, RECENT_DAYS);
  if (frame === null) return null;
  const { bars, gaps, zero, limit } = drawChart(facts, frame);
  const hatch = `url(#${id}hatch)`;
  return (
    <svg
      className={styles.small}
      data-list={inList || undefined}
      role="img"
      aria-labelledby={`${id}title ${id}desc`}
    >
      <title id={`${id}title`}>{`Output of ${of}, the last ${RECENT_DAYS} days`}</title>
      <desc id={`${id}desc`}>{recentSummary(facts, frame)}</desc>
      <Hatch id={`${id}hatch`} />
      {gaps.map((gap) => (
        <BoxShape key={gap.x} box={gap} className={styles.gap} fill={hatch} />
      ))}
      {bars.map((bar) => (
        <BarShape key={bar.reading.id} bar={bar} hatch={hatch} />
      ))}
      <Across y={zero} className={styles.zero} />
      {limit !== null && <Across y={limit} className={styles.limit} />}
    </svg>
  );
}
