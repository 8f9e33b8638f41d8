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

/** Forms that answer one question, under its word. */
export type FormGroup = { readonly word: string; readonly forms: readonly TubeForm[] };

type Offered = Pick<TubeState, "status" | "kind" | "mode" | "unverified">;

const said: FormGroup = { word: "Said and given", forms: ["called", "step assigned"] };

/** A cap and what happens at the skin hang on a part outside. */
function whileIn({ kind, mode, unverified }: Offered): readonly FormGroup[] {
  const { outside } = kindOf(kind);
  const cap: readonly TubeForm[] = outside ? [mode === "capped" ? "uncapped" : "capped"] : [];
  const told: readonly TubeForm[] = unverified === null ? [] : ["verified"];
  return [
    { word: "Done", forms: ["exchanged", "upsized", "converted", ...cap, "removed"] },
    { word: "Happened", forms: ["fell out", "partly dislodged"] },
    { word: "Seen", forms: [...told, "checked", "tip position", "facts noted", "clock dated"] },
    { word: "Planned", forms: ["exchange planned", "plan recorded"] },
    said,
  ];
}

/** The three ways in which a tube that is out goes on. */
export const afterOut: readonly TubeForm[] = ["salvaged", "new puncture", "not replaced"];

/** What may be recorded of a tube, the likeliest first, by whether it is in. */
export function offeredForms(tube: Offered): readonly FormGroup[] {
  const noted: FormGroup = { word: "Seen", forms: ["facts noted"] };
  switch (tube.status) {
    case "in":
      return whileIn(tube);
    case "out, undecided":
      return [{ word: "How it goes on", forms: afterOut }, noted, said];
    case "removal not confirmed":
      return [{ word: "Done", forms: ["verified", "removed"] }, noted, said];
    case "fragment retained":
      return [{ word: "Done", forms: ["removed"] }, noted, said];
    case "ended":
      return [noted, { word: "Said", forms: ["called"] }];
  }
}
