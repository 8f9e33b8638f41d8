import type { ReactNode } from "react";
import { ExchangeAnswers } from "#app/bore/exchange-answers.tsx";
import { planAnswer } from "#app/tubes/plan-answer.ts";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { storySentence } from "#shared/words/events.ts";
import { changedLine } from "#shared/words/exchange-plan.ts";
import styles from "./tube.module.css";

type PlannedExchangeOfProps = { readonly view: TubePage };

/** The exchange that is planned, and what the facts of today say of it. */
export function PlannedExchangeOf({ view }: PlannedExchangeOfProps): ReactNode {
  const planned = view.tube.plannedExchange;
  const said = planAnswer(view);
  if (planned === null || said === null || view.tube.status !== "in") return null;
  const { eventId, ...payload } = planned;
  const changed = changedLine(said.changed);
  return (
    <section className={styles.section}>
      <h2>Planned exchange</h2>
      <p>
        {storySentence({ kind: "exchange planned", payload }, () => "")} <a href={`#${eventId}`}>the entry</a>
      </p>
      {changed !== null && <p className={styles.caution}>{changed}</p>}
      <ExchangeAnswers answer={said.answer} />
      <p className={styles.caution}>
        By recorded facts only: what is crusted, kinked or wrongly labelled is not in them. Going on is the
        operator's judgement.
      </p>
    </section>
  );
}
