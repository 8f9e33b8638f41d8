import type { ReactNode } from "react";
import { printWhen } from "#shared/day/print-day.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import type { Conditions } from "#shared/tube/payloads.ts";
import type { PatientTubes } from "#shared/tube/state.ts";
import { conditionNames } from "#shared/words/conditions.ts";
import { toldFact } from "#shared/words/facts.ts";
import { whySentence } from "#shared/words/why.ts";
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

/** Where the patient is and what was decided of hospice: entries of their own, told as the story tells them. */
function noted({ whereabouts, hospice }: PatientTubes): readonly string[] {
  const where =
    whereabouts === null
      ? []
      : [
          `${[whereabouts.place, whereabouts.where].filter(Boolean).join(", ")} (told ${printWhen(whereabouts.when)})`,
        ];
  const decision = hospice?.decision ?? null;
  if (decision === null) return where;
  const { until, calls, exchanges, decidedBy, team } = decision;
  const args = { until, calls, exchanges, decidedBy, team };
  return [...where, `in hospice. ${whySentence({ code: "hospice-decided", args, eventId: null })}`];
}

/** What is there first; then what is not, what is unknown, and what nobody has recorded: none of these reads as the other. */
export function KnownOfPatient({ state }: { readonly state: PatientTubes }): ReactNode {
  const all = allOf(state.conditions);
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
  // What was decided says already that it is so.
  const isTold = ({ name }: Said): boolean =>
    name === conditionNames.hospice && state.hospice?.decision != null;
  const there = [...noted(state), ...all.filter((said) => !isTold(said)).flatMap(present)];
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
