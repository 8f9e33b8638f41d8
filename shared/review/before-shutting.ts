import type { Reading } from "#shared/output/reading.ts";
import { known } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { Conditions } from "#shared/tube/payloads.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** What is said before a tube is capped or clamped. Grave: said first and in the accent; it blocks nobody. */
export type ShuttingDoubt =
  | { readonly code: "air-leak"; readonly grave: true; readonly to: Reading["to"] }
  | { readonly code: "air-leak-not-recorded"; readonly grave: true }
  /** None was seen last: how long ago that is, whoever shuts it judges. */
  | { readonly code: "no-air-leak-then"; readonly grave: false; readonly to: Reading["to"] }
  | { readonly code: "conduit-or-neobladder"; readonly grave: false };

type Shutting = {
  readonly tube: Pick<TubeState, "role" | "kind">;
  readonly conditions: Pick<Conditions, "conduitOrNeobladder">;
  /** The standing readings of the tube, in any order. */
  readonly readings: readonly Reading[];
};

const lastThatSays = (readings: readonly Reading[]): Reading | undefined =>
  readings.filter(({ airLeak }) => airLeak !== "not recorded").toSorted((a, b) => b.to - a.to)[0];

/**
 * A chest tube is never clamped while it bubbles: a leak that was seen last, or that nobody looked for, is said gravely, and when none was
 * seen last. A kidney's tube in
 * a patient with a conduit or a neobladder is often wanted open, by common practice; no source.
 */
export function beforeShutting({ tube, conditions, readings }: Shutting): readonly ShuttingDoubt[] {
  const doubts: ShuttingDoubt[] = [];
  if (tube.role === "air and fluid") {
    const last = lastThatSays(readings);
    if (last === undefined) doubts.push({ code: "air-leak-not-recorded", grave: true });
    else if (last.airLeak === "present") doubts.push({ code: "air-leak", grave: true, to: last.to });
    else doubts.push({ code: "no-air-leak-then", grave: false, to: last.to });
  }
  const conduit = conditions.conduitOrNeobladder;
  const drainsUrine = kindOf(tube.kind).output === "urine";
  if (drainsUrine && conduit !== undefined && known(conduit) === true)
    doubts.push({ code: "conduit-or-neobladder", grave: false });
  return doubts;
}
