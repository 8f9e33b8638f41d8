import type { PatientForm, TubeForm } from "#app/record/procedures.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { hasBalloon } from "#shared/tube/has-balloon.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** The one form that a step most likely ends in. */
export const formOfStep = {
  "tube out": "salvaged",
  "part out": "repositioned",
  exchange: "exchanged",
  "remove or exchange": "plan recorded",
  remove: "removed",
  review: "review decided",
  call: null,
  "fragment retained": "removed",
  "confirm removal": "verified",
  "confirm what was done elsewhere": "verified",
  "assess the date": "clock dated",
  "no row": "plan recorded",
  "no day left": "plan recorded",
  contradiction: null,
  alarm: "alarm closed",
  "clamp trial": "clamp trial passed",
  "ask again": null,
  "balloon check": "balloon checked",
  "anchors out": "anchors removed",
  "tip position": "tip position",
  handover: "accepted elsewhere",
  "find out": "facts noted",
  hospice: null,
  whereabouts: null,
  reconcile: null,
  "which tube out": null,
  "flush differently": "facts noted",
  "to suction": "suction changed",
  reposition: "repositioned",
  upsize: "exchange planned",
  downsize: "exchange planned",
  "second drain": "decision done",
  "tube check": "checked",
  imaging: "decision done",
  "fluid tests": "fluid tested",
  "cap or clamp trial": "clamp trial started",
  refer: "decision done",
  "hand over": "handed over",
  visit: null,
  "prepare visit": null,
  rebook: null,
  "call back": null,
  "alternate contact": null,
  letter: null,
  "ask the referrer": null,
  "not reached": null,
  "red flag": null,
  diary: null,
  "tell of the tube": "told of the tube",
} as const satisfies Record<StepKind, TubeForm | null>;

/** The same of a step that is the patient's: its form stands on the patient's page. */
export const patientFormOfStep: Partial<Record<StepKind, PatientForm>> = {
  hospice: "hospice decided",
  whereabouts: "whereabouts noted",
  reconcile: "reconciled",
  letter: "letter sent",
  "not reached": "not reached decided",
};

/** Every form that answers a step of the patient. Which tube is out is answered by the removal of one, or by saying how it was found. */
export function formsOfPatientStep({ kind }: Pick<OpenStep, "kind">): readonly PatientForm[] {
  if (kind === "which tube out") return ["reconciled"];
  const form = patientFormOfStep[kind];
  return form === undefined ? [] : [form];
}

/** What may be recorded of a patient, the likeliest first. */
export function patientForms({ died, tubes }: Pick<PatientTubes, "died" | "tubes">): readonly PatientForm[] {
  if (died !== null) return ["conditions noted", "reconcile asked", "reconciled"];
  const several = tubes.filter(({ status }) => status === "in").length > 1;
  return [
    "placed",
    "clinical state noted",
    "conditions noted",
    "whereabouts noted",
    "letter sent",
    "not reached decided",
    "hospice decided",
    ...(several ? (["reported out"] as const) : []),
    "reconcile asked",
    "reconciled",
    "died",
  ];
}

/** Forms that answer one question, under its word. */
export type FormGroup = { readonly word: string; readonly forms: readonly TubeForm[] };

type Offered = Pick<TubeState, "status" | "kind" | "mode" | "retention" | "unverified">;

const said: FormGroup = {
  word: "Said and given",
  forms: ["step assigned", "transferred", "handed over", "accepted elsewhere"],
};

/** What shuts a tube, or opens it again. */
function shutting(mode: TubeState["mode"]): readonly TubeForm[] {
  if (mode === "on a clamp trial") return ["clamp trial passed", "clamp trial failed", "uncapped"];
  return [mode === "capped" ? "uncapped" : "capped", "clamp trial started"];
}

/** A cap, a flush and what happens at the skin hang on a part outside; water on a balloon. */
function whileIn(tube: Offered): readonly FormGroup[] {
  const outside = <F extends TubeForm>(...forms: readonly F[]): readonly F[] =>
    kindOf(tube.kind).outside ? forms : [];
  const told: readonly TubeForm[] = tube.unverified === null ? [] : ["verified"];
  const usual: readonly TubeForm[] = kindOf(tube.kind).output === null ? [] : ["usual level accepted"];
  const water: readonly TubeForm[] = hasBalloon(tube) ? ["balloon checked"] : [];
  return [
    {
      word: "Done",
      forms: [
        "exchanged",
        "upsized",
        "downsized",
        "converted",
        "repositioned",
        ...outside("flushed", "unblocked", ...shutting(tube.mode), "suction changed"),
        ...water,
        ...outside("anchors removed"),
        "removed",
      ],
    },
    {
      word: "Happened",
      forms: ["fell out", "partly dislodged", "blocked", ...outside("leaking"), "infected", "bled", "broken"],
    },
    {
      word: "Seen",
      forms: [...told, "checked", "tip position", ...outside("fluid tested"), "facts noted", "clock dated"],
    },
    {
      word: "Planned",
      forms: [
        "review decided",
        "review asked",
        "exchange planned",
        "plan recorded",
        "removal decided",
        "decision done",
        ...usual,
        "follow-up ended",
      ],
    },
    kindOf(tube.kind).outside ? said : { ...said, forms: ["told of the tube", ...said.forms] },
  ];
}

/** The three ways in which a tube that is out goes on. */
export const afterOut: readonly TubeForm[] = ["salvaged", "new puncture", "not replaced"];

/** The two ways in which a piece that is left inside goes on: it comes out, or a clinician decides that it stays. */
export const afterFragment: readonly TubeForm[] = ["removed", "follow-up ended"];

/** What may be recorded of a tube, the likeliest first, by whether it is in. */
export function offeredForms(tube: Offered): readonly FormGroup[] {
  const noted: FormGroup = { word: "Seen", forms: ["facts noted"] };
  const decided: FormGroup = { word: "Decided", forms: ["follow-up ended"] };
  const siteOnly: FormGroup = { word: "Happened", forms: ["infected", "bled", "broken"] };
  switch (tube.status) {
    case "in":
      return whileIn(tube);
    case "out, undecided":
      return [{ word: "How it goes on", forms: afterOut }, siteOnly, noted, said];
    case "removal not confirmed":
      return [{ word: "Done", forms: ["verified", "removed"] }, noted, said, decided];
    case "fragment retained":
      return [{ word: "How it goes on", forms: afterFragment }, noted, said];
    case "ended":
      return [noted];
  }
}
