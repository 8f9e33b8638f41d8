import { isProcedure, may } from "#shared/access/may.ts";
import type { Person } from "#shared/access/person.ts";
import type { FormKind } from "#shared/record/event-forms.ts";

/** Each form about one tube with the procedure of the API that takes what was typed in it. */
export const tubeProcedures = {
  checked: "checked",
  exchanged: "exchanged",
  upsized: "upsized",
  downsized: "downsized",
  salvaged: "salvaged",
  "new puncture": "newPuncture",
  capped: "capped",
  uncapped: "uncapped",
  "tip position": "tipPosition",
  "partly dislodged": "partlyDislodged",
  "fell out": "fellOut",
  "not replaced": "notReplaced",
  converted: "converted",
  removed: "removed",
  "facts noted": "factsNoted",
  verified: "verified",
  "clock dated": "clockDated",
  "plan recorded": "planRecorded",
  "exchange planned": "exchangePlanned",
  "step assigned": "stepAssigned",
  repositioned: "repositioned",
  flushed: "flushed",
  unblocked: "unblocked",
  "clamp trial started": "clampTrialStarted",
  "clamp trial passed": "clampTrialPassed",
  "clamp trial failed": "clampTrialFailed",
  "suction changed": "suctionChanged",
  "balloon checked": "balloonChecked",
  "anchors removed": "anchorsRemoved",
  blocked: "blocked",
  leaking: "leaking",
  infected: "infected",
  bled: "bled",
  broken: "broken",
  "fluid tested": "fluidTested",
  "removal decided": "removalDecided",
  "handed over": "handedOver",
  "accepted elsewhere": "acceptedElsewhere",
  "follow-up ended": "followUpEnded",
  transferred: "transferred",
  "review asked": "reviewAsked",
  "review decided": "reviewDecided",
  "decision done": "decisionDone",
  "alarm closed": "alarmClosed",
  "usual level accepted": "usualLevelAccepted",
  "told of the tube": "toldOfTheTube",
} as const satisfies Partial<Record<FormKind, string>>;
export type TubeForm = keyof typeof tubeProcedures;

/** The same for forms about a patient. */
export const patientProcedures = {
  placed: "tube",
  "conditions noted": "conditions",
  died: "died",
  "hospice decided": "hospiceDecided",
  "whereabouts noted": "whereaboutsNoted",
  "clinical state noted": "clinicalStateNoted",
  "reconcile asked": "reconcileAsked",
  reconciled: "reconciled",
  "reported out": "reportedOut",
  "letter sent": "letterSent",
  "not reached decided": "notReachedDecided",
} as const satisfies Partial<Record<FormKind, string>>;
export type PatientForm = keyof typeof patientProcedures;

/** The last part of a form's address: "new-puncture". */
export const slugOf = (form: TubeForm | PatientForm): string => form.replaceAll(" ", "-");

const found = <F extends string>(forms: Readonly<Record<F, string>>, slug: string): F | undefined =>
  (Object.keys(forms) as F[]).find((form) => form.replaceAll(" ", "-") === slug);

export const tubeFormOf = (slug: string): TubeForm | undefined => found(tubeProcedures, slug);
export const patientFormOf = (slug: string): PatientForm | undefined => found(patientProcedures, slug);

/** Whether this person may record by this form, as the access table says. */
export function mayRecord(person: Person, form: TubeForm | PatientForm): boolean {
  const path = `record.${{ ...tubeProcedures, ...patientProcedures }[form]}`;
  return isProcedure(path) && may(person, path);
}

export const tubeFormHref = (tubeId: string, form: TubeForm): string =>
  `/tubes/${tubeId}/record/${slugOf(form)}`;
export const patientFormHref = (patientId: string, form: PatientForm): string =>
  `/patients/${patientId}/record/${slugOf(form)}`;
