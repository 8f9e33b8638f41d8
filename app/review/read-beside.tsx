import type { ReactNode } from "react";
import type { ReviewView } from "#app/review/decision-changed.tsx";
import type { UrinePage } from "#app/tubes/tube-page.ts";
import { printDay } from "#shared/day/print-day.ts";
import { numberedName } from "#shared/tube/name.ts";
import { lastReadingWords } from "#shared/words/chart.ts";
import { besideWords, lowMeans, urineSumWords } from "#shared/words/together.ts";
import styles from "./review.module.css";

type ReadBesideProps = { readonly beside: ReviewView["beside"]; readonly urine: UrinePage };

/** What this tube's output is not read without: a linked tube of opposite meaning, urine by the other routes. */
export function ReadBeside({ beside, urine }: ReadBesideProps): ReactNode {
  return (
    <>
      {beside.map((one) => (
        <p key={one.tube.id} className={styles.week}>
          Beside it:{" "}
          <a href={`/tubes/${one.tube.id}/output`}>
            <bdi>{numberedName(one.tube)}</bdi>
          </a>
          {one.chart !== null && `, ${lastReadingWords(one.chart)}`}. {lowMeans(one.tube)} {besideWords(one)}
        </p>
      ))}
      {urine !== null && urine.routes.length > 1 && <UrineLine urine={urine} />}
    </>
  );
}

/** Yesterday, and the newest day whose sum is known where that is another. */
function UrineLine({ urine: { routes, days } }: { readonly urine: NonNullable<UrinePage> }): ReactNode {
  const titles = new Map(routes.map(({ tubeId, title }) => [tubeId, title]));
  const newest = days.find(({ sum }) => sum.kind === "known");
  const shown = [...new Set([days[0], newest])].filter((day) => day !== undefined);
  if (shown.length === 0) return null;
  return (
    <p className={styles.week}>
      Urine by all routes:{" "}
      {shown.map(({ day, sum }) => `${printDay(day)} ${urineSumWords(sum, titles)}`).join("; ")}.
    </p>
  );
}
