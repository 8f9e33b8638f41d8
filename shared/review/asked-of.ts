import type { FindingName } from "#shared/clinical/findings-schema.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { Role } from "#shared/tube/vocabulary.ts";

/** What bears on patency, the newest of each. */
export const bearsOnPatency: readonly EventKind[] = [
  "flushed",
  "unblocked",
  "blocked",
  "leaking",
  "partly dislodged",
  "repositioned",
];

const ofAll = ["temperature", "chills", "feels", "pain", "antibioticsUntil", "imaging"] as const;
const infection = ["whiteCells", "crp", "culture"] as const;

/** What of the clinical state is asked for, by what the tube is for. Common practice, no source. */
export const clinicalAskedOf: Readonly<Record<Role, readonly FindingName[]>> = {
  collection: [...ofAll, ...infection],
  "drains an organ": [
    ...ofAll,
    ...infection,
    "creatinine",
    "bilirubin",
    "sodium",
    "potassium",
    "voidedVolume",
  ],
  "air and fluid": [...ofAll, "coughOrBreathlessness", ...infection],
  intermittent: [...ofAll, "coughOrBreathlessness"],
  internal: [...ofAll, "creatinine", "bilirubin"],
  feeding: ofAll,
  venting: [...ofAll, "sodium", "potassium"],
  "irrigation access": ofAll,
};
