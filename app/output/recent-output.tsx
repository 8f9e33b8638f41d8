import type { ReactNode } from "react";
import { SmallChart } from "#app/output/small-chart.tsx";
import type { ChartFacts } from "#shared/output/chart/chart-facts.ts";
import { RECENT_DAYS } from "#shared/output/chart/recent-chart.ts";
import { lastReadingWords, smallChartKey } from "#shared/words/chart.ts";
import styles from "./chart.module.css";

/** What stands over a column of small charts, in one line: a column without any would break it. */
export const recentHead = `Output,\u00a0${RECENT_DAYS}\u00a0days`;

type RecentOutputProps = { readonly of: string; readonly facts: ChartFacts };

/** A tube's last days in a list: the chart, and what was logged last in words. */
export function RecentOutput({ of, facts }: RecentOutputProps): ReactNode {
  return (
    <div className={styles.recent}>
      <SmallChart of={of} facts={facts} inList />
      <span>{lastReadingWords(facts)}</span>
    </div>
  );
}

/** How they are read, once beneath a list that has any. */
export const RecentKey = (): ReactNode => <p className={styles.key}>{smallChartKey}</p>;
