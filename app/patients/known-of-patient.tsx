import type { ReactNode } from "react";
import type { Fact } from "#shared/tube/certainty.ts";
import type { Conditions } from "#shared/tube/payloads.ts";
import { conditionNames } from "#shared/words/conditions.ts";
import { toldFact } from "#shared/words/facts.ts";
import styles from "./known-of-patient.module.css";

type Said = { readonly name: string; readonly fact: Fact<boolean | string> | undefined };

const allOf = (conditions: Conditions): readonly Said[] =>
  (Object.keys(conditionNames) as (keyof Conditions)[]).map((key) => ({
    name: conditionNames[key],
    fact: conditions[key],
  }));

const bare = (name: string): string => name.replace(/:$/, "");

function present({ name, fact }: Said): string[] {
  if (fact === undefined || fact.certainty === "unknown" || fact.value === false) return [];
  const print = (value: boolean | string): string => (typeof value === "string" ? `${name} ${value}` : name);
  return [toldFact(fact, { what: name, print, telling: "marked" })];
}

const isNo = ({ fact }: Said): boolean =>
  fact !== undefined && fact.certainty !== "unknown" && fact.value === false;

/** What is there first; then what is not, what is unknown, and what nobody has recorded: none of these reads as the other. */
export function KnownOfPatient({ conditions }: { readonly conditions: Conditions }): ReactNode {
  const all = allOf(conditions);
  const names = (of: (said: Said) => boolean): string =>
    all
      .filter(of)
      .map(({ name }) => bare(name))
      .join(", ");
  const rest = [
    { word: "No", names: names(isNo) },
    { word: "Unknown", names: names(({ fact }) => fact?.certainty === "unknown") },
    { word: "Not recorded", names: names(({ fact }) => fact === undefined) },
  ].filter((line) => line.names !== "");
  const there = all.flatMap(present);
  return (
    <>
      {there.length > 0 && (
        <ul className={styles.present}>
          {there.map((said) => (
            <li key={said}>
              <bdi>{said}</bdi>
            </li>
          ))}
        </ul>
      )}
      <dl className={styles.rest}>
        {rest.map((line) => (
          <div key={line.word}>
            <dt>{line.word}</dt>
            <dd>{line.names}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
