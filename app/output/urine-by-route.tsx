import type { ReactNode } from "react";
import type { UrinePage } from "#app/tubes/tube-page.ts";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import { printDay } from "#shared/day/print-day.ts";
import { remarkWords } from "#shared/words/output.ts";
import {
  routeWords,
  urineKey,
  urineSumWords,
  voidedNeverNoted,
  voidedWords,
} from "#shared/words/together.ts";
import styles from "./output.module.css";

type View = NonNullable<UrinePage>;
type UrineDay = View["days"][number];

/** Left, right and voided with their sum, day by day: what one kidney does not bring the other may, and neither says so alone. */
export function UrineByRoute({ urine }: { readonly urine: View }): ReactNode {
  const { routes, days } = urine;
  const isAlone = routes.length === 1 && days.every(({ voided }) => voided.kind === "missing");
  if (isAlone) return <p className={styles.caution}>{voidedNeverNoted}</p>;
  const titles = new Map(routes.map(({ tubeId, title }) => [tubeId, title]));
  const ofRoute = ({ tubeId, title }: View["routes"][number]): Column<UrineDay> => ({
    head: title,
    cell: (day) => {
      const one = day.routes.find((route) => route.tubeId === tubeId);
      return one === undefined ? "" : routeWords(one.figure);
    },
  });
  return (
    <div className={styles.table}>
      <DataTable
        caption="Urine by all routes, net in 24 h, newest first"
        columns={[
          { head: "Day", cell: ({ day }) => <span className={styles.when}>{printDay(day)}</span> },
          ...routes.map(ofRoute),
          { head: "Voided", cell: ({ voided }) => voidedWords(voided) },
          {
            head: "Sum",
            cell: ({ sum }) => <Sum words={urineSumWords(sum, titles)} isKnown={sum.kind === "known"} />,
          },
          { head: "Remarks", cell: ({ remarks }) => remarks.map((remark) => remarkWords[remark]).join(" ") },
        ]}
        rows={days}
        keyOf={({ day }) => day}
        none="No day yet: nothing is logged."
      />
      <p className={styles.caution}>{urineKey}</p>
    </div>
  );
}

const Sum = ({ words, isKnown }: { readonly words: string; readonly isKnown: boolean }): ReactNode => (
  <span className={isKnown ? styles.net : styles.missing}>{words}</span>
);
