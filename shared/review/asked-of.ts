import type { FindingName } from "#shared/clinical/findings-schema.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { TubeState } from "#shared/tube/state.ts";
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

const byRole: Readonly<Record<Role, readonly FindingName[]>> = {
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

/** What of the clinical state is asked for, by what the tube is for; where bile may be held back, jaundice. Common practice, no source. */
export function clinicalAskedOf({ role, kind }: Pick<TubeState, "role" | "kind">): readonly FindingName[] {
  const { output } = kindOf(kind);
  return output === "bile" || output === "gallbladder" ? [...byRole[role], "jaundice"] : byRole[role];
}
