import type { ReactNode } from "react";
import type { Fact } from "#shared/tube/certainty.ts";
import { toldFact } from "#shared/words/facts.ts";
import styles from "./fact-list.module.css";

/** One thing that is known or not. Null: nobody has said anything. */
export type FactRow = { readonly word: string; readonly says: string | null; readonly unknown?: boolean };

/** A fact with how well it is known. An unknown one says so. */
export const factRow = <T,>(word: string, fact: Fact<T>, print: (value: T) => string): FactRow =>
  fact.certainty === "unknown"
    ? { word, says: "unknown", unknown: true }
    : { word, says: toldFact(fact, { what: word, print, telling: "marked" }) };

type FactListProps = { readonly rows: readonly FactRow[] };

/** Facts in columns, each by its word. What is unknown stands among them, so that nothing reads as good by leaving it out. */
export function FactList({ rows }: FactListProps): ReactNode {
  return (
    <dl className={styles.facts}>
      {rows.map(({ word, says, unknown }) => (
        <div key={word} className={styles.fact}>
          <dt>{word}</dt>
          <dd data-unknown={unknown === true || says === null || undefined}>
            <bdi>{says ?? "not recorded"}</bdi>
          </dd>
        </div>
      ))}
    </dl>
  );
}
