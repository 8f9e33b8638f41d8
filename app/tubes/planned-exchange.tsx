import type { ReactNode } from "react";
import { PassageDrawings } from "#app/bore/passage-drawings.tsx";
import { passagesOf } from "#app/tubes/passage-of.ts";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { storySentence } from "#shared/words/events.ts";
import styles from "./tube.module.css";

/** The exchange that is planned, and whether its wire passes through both tubes. */
export function PlannedExchangeOf({ view }: { readonly view: TubePage }): ReactNode {
  const planned = view.tube.plannedExchange;
  if (planned === null || view.tube.status !== "in") return null;
  const { eventId, ...payload } = planned;
  return (
    <section className={styles.section}>
      <h2>Planned exchange</h2>
      <p>
        {storySentence({ kind: "exchange planned", payload }, () => "")} <a href={`#${eventId}`}>the entry</a>
      </p>
      <PassageDrawings passages={passagesOf(view)} withLines />
      <p className={styles.caution}>
        By recorded facts only: what is crusted, kinked or wrongly labelled is not in them. Going on is the
        operator's judgement.
      </p>
    </section>
  );
}
