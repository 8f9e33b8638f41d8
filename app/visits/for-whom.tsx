import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import type { SignedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import type { Identity } from "#app/ui/identity-bar.tsx";
import type { Choosing } from "#app/visits/choosing.ts";
import { tubeName } from "#shared/tube/name.ts";
import { slotPhrase } from "#shared/words/visit-events.ts";

/** For whom a time is looked for on these pages: who stands above, and what is said. */
export type ForWhom = { readonly identity: Identity; readonly says: ReactNode };

/** Asks the API for the patient, who is then written down as seen. Null where nobody is named. */
export async function forWhom(api: SignedIn["api"], choosing: Choosing | null): Promise<ForWhom | null> {
  if (choosing === null) return null;
  const { patientId } = choosing;
  if (choosing.kind === "moves") {
    const { visitId } = choosing;
    const { patient, visit, tubes } = await orNotFound(api.visit.view({ patientId, visitId }));
    return {
      identity: identityOf(patient, tubes.map(({ name }) => name).join("; ")),
      says: `A free time moves this visit, which stands on ${slotPhrase(visit)}. It is checked again before it moves.`,
    };
  }
  const { patient, state } = await orNotFound(api.patient.view({ patientId }));
  const named = choosing.tubes.split(",").map((one) => one.split(":")[0]);
  const tubes = state.tubes.filter(({ id }) => named.includes(id)).map(tubeName);
  return {
    identity: identityOf(patient, tubes.length === 0 ? null : tubes.join("; ")),
    says: "A free time goes on to booking it for these tubes, where it is checked again.",
  };
}
