import type { ReactNode } from "react";
import type { ExchangeAnswer } from "#shared/fit/exchange-plan.ts";
import { type ExchangePlanned, exchangePlanOf } from "#shared/tube/exchange-planned.ts";
import { tableTopLines } from "#shared/words/table-top.ts";
import styles from "./table-top.module.css";

type TableTopProps = { readonly planned: ExchangePlanned; readonly answer: ExchangeAnswer };

/** The list itself, a box to tick before each line. */
export function TableTop({ planned, answer }: TableTopProps): ReactNode {
  return (
    <div className={styles.list}>
      {tableTopLines(exchangePlanOf(planned), answer).map(({ head, lines }) => (
        <section key={head} className={styles.group}>
          <h2 className={styles.head}>{head}</h2>
          <ul>
            {lines.map((line) => (
              <li key={line} className={styles.line}>
                <bdi>{line}</bdi>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}
