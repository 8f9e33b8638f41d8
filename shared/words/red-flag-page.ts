import type { Level } from "#shared/protocol/levels.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";
import type { Conditions } from "#shared/tube/payloads.ts";
import { conditionNames } from "#shared/words/conditions.ts";

/** Stands on every page about a red flag. */
export const notForEmergencies =
  "Dwellbook is not for emergencies and rings nobody. The local on-call route decides who comes and when; it goes before anything that is typed here.";

const namedOften = ["chemotherapy", "immuneSuppression", "cordInjuryT6OrAbove"] as const;

const conditionSays = (fact: Fact<boolean> | undefined): string => {
  const value = fact === undefined ? undefined : known(fact);
  if (value === undefined) return "not known: ask";
  return `${value ? "yes" : "no"}${fact?.certainty === "reported" ? " (reported)" : ""}`;
};

/** What makes another red flag of the same words, as far as it is known: unknown is never taken for absent. */
export const bearsOnFlag = (conditions: Conditions): readonly { word: string; says: string }[] =>
  namedOften.map((key) => ({ word: conditionNames[key], says: conditionSays(conditions[key]) }));

/** How soon somebody is reached, and how. */
export const reachWords: Readonly<Record<Level, string>> = {
  "emergency services": "Emergency services, before anything else is typed.",
  "on call now": "The person on call now, by the local on-call route.",
  "same day": "Somebody of the clinic on the same day; outside its hours by the local on-call route.",
  "next working day": "Somebody of the clinic on the next working day.",
};
