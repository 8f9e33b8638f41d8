import type { ClinicalState } from "#shared/clinical/clinical-state.ts";
import { printDay, printWhen } from "#shared/day/print-day.ts";
import type { PatientDetails } from "#shared/record/patient/patient-details.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import type { Conditions } from "#shared/tube/payloads.ts";
import type { PrerequisiteThing } from "#shared/visit/prerequisite-things.ts";
import { toldFact } from "#shared/words/facts.ts";

/** What is known of the patient that bears on a visit. */
export type Known = {
  readonly conditions: Conditions;
  readonly clinical: ClinicalState;
  readonly contact: Pick<PatientDetails, "language" | "needsInterpreter">;
};

const yesNo = (value: boolean): string => (value ? "yes" : "no");
const asIs = (value: string): string => value;

const told = <T>(what: string, fact: Fact<T> | undefined, print: (value: T) => string): string =>
  fact === undefined
    ? "nothing on record"
    : `on record: ${toldFact(fact, { what, print, telling: "marked" })}`;

function bloodThinners({ bloodThinners: which, bloodThinnerReason: reason }: Conditions): string {
  const because =
    reason === undefined
      ? ""
      : `, for ${toldFact(reason, { what: "reason", print: asIs, telling: "marked" })}`;
  return `${told("blood thinners", which, asIs)}${because}`;
}

function interpreter({ language, needsInterpreter }: Known["contact"]): string {
  const speaks = language === "" ? "" : `, speaks ${language}`;
  if (needsInterpreter === null) return `nobody has asked whether one is needed${speaks}`;
  return `on record: ${needsInterpreter ? "needed" : "not needed"}${speaks}`;
}

function antibiotics({ antibioticsUntil, culture }: ClinicalState): string {
  const until =
    antibioticsUntil === undefined
      ? "nothing on record"
      : told("until when", antibioticsUntil.fact, (on) => (on === "none" ? "none" : `until ${printDay(on)}`));
  const grown =
    culture === undefined
      ? "no culture on record"
      : `last culture ${printWhen(culture.when)}: ${toldFact(culture.fact, { what: "result", print: asIs, telling: "marked" })}`;
  return `${until}; ${grown}`;
}

/** What the record says that bears on a thing: it answers nothing, and an unknown is told as one. Null where nothing of it is ever recorded. */
export function onRecord(thing: PrerequisiteThing, { conditions, clinical, contact }: Known): string | null {
  switch (thing) {
    case "allergies":
      return told("allergies", conditions.allergies, asIs);
    case "blood thinners":
      return bloodThinners(conditions);
    case "antibiotic cover":
      return antibiotics(clinical);
    case "pregnancy test":
      return told("pregnancy", conditions.pregnancy, (value) => `pregnancy ${yesNo(value)}`);
    case "interpreter":
      return interpreter(contact);
    case "dialysis or chemotherapy":
      return told("chemotherapy", conditions.chemotherapy, (value) => `chemotherapy ${yesNo(value)}`);
    case "isolation":
      return told("isolation", conditions.isolation, asIs);
    case "signed order":
    case "labs":
    case "fasting":
    case "escort":
    case "transport":
    case "lies prone":
      return null;
  }
}
