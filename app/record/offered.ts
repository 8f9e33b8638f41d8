import type { TubeForm } from "#app/record/procedures.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** The one form that a step most likely ends in. */
export const formOfStep = {
  "tube out": "salvaged",
  "part out": "exchanged",
  exchange: "exchanged",
  "remove or exchange": "plan recorded",
  remove: "removed",
  review: "checked",
  call: "called",
  "fragment retained": "removed",
  "confirm removal": "verified",
  "confirm what was done elsewhere": "verified",
  "assess the date": "clock dated",
  "no row": "plan recorded",
  "no day left": "plan recorded",
  contradiction: null,
} as const satisfies Record<StepKind, TubeForm | null>;

const always: readonly TubeForm[] = ["facts noted", "called", "step assigned"];

const whileIn: readonly TubeForm[] = [
  "exchanged",
  "exchange planned",
  "plan recorded",
  "checked",
  "upsized",
  "removed",
  "fell out",
  "partly dislodged",
  "converted",
  "clock dated",
];

/** A cap and a tip's position hang on the tube: one without an outside has no cap. */
function byMode({ kind, mode }: Pick<TubeState, "kind" | "mode">): readonly TubeForm[] {
  if (!kindOf(kind).outside) return ["tip position"];
  return [mode === "capped" ? "uncapped" : "capped", "tip position"];
}

/** What may be recorded of a tube, the likeliest first, by whether it is in. */
export function offeredForms(
  tube: Pick<TubeState, "status" | "kind" | "mode" | "unverified">,
): readonly TubeForm[] {
  const told: readonly TubeForm[] = tube.unverified === null ? [] : ["verified"];
  switch (tube.status) {
    case "in":
      return [...told, ...whileIn, ...byMode(tube), ...always];
    case "out, undecided":
      return ["salvaged", "new puncture", "not replaced", ...always];
    case "removal not confirmed":
      return ["verified", "removed", ...always];
    case "fragment retained":
      return ["removed", ...always];
    case "ended":
      return ["facts noted", "called"];
  }
}
