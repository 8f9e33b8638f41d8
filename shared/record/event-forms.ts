import type { Texts } from "#shared/record/field-spec.ts";
import type { EntryOf, FormContext, FormResult } from "#shared/record/form.ts";
import { clinicalForm } from "#shared/record/patient/clinical-form.ts";
import { conditionsForm } from "#shared/record/patient/conditions-form.ts";
import { deathForm } from "#shared/record/patient/death-form.ts";
import { hospiceForm } from "#shared/record/patient/hospice-form.ts";
import { letterForm } from "#shared/record/patient/letter-form.ts";
import { notReachedForm } from "#shared/record/patient/not-reached-form.ts";
import { reconcileAskForm, reconcileForm } from "#shared/record/patient/reconcile-forms.ts";
import { reportedOutForm } from "#shared/record/patient/reported-out-form.ts";
import { whereaboutsForm } from "#shared/record/patient/whereabouts-form.ts";
import { alarmClosedForm, usualLevelForm } from "#shared/record/tube/alarm-forms.ts";
import { anchorsForm } from "#shared/record/tube/anchors-form.ts";
import { assignForm } from "#shared/record/tube/assign-form.ts";
import { balloonCheckForm } from "#shared/record/tube/balloon-check-form.ts";
import { callForm } from "#shared/record/tube/call-form.ts";
import { capForm, uncapForm } from "#shared/record/tube/capping-forms.ts";
import { checkForm } from "#shared/record/tube/check-form.ts";
import { clockForm } from "#shared/record/tube/clock-form.ts";
import { conversionForm } from "#shared/record/tube/conversion-form.ts";
import { fellOutForm, notReplacedForm, partlyDislodgedForm } from "#shared/record/tube/dislodged-forms.ts";
import { endForm } from "#shared/record/tube/end-form.ts";
import { factsForm } from "#shared/record/tube/facts-form.ts";
import { fluidTestForm } from "#shared/record/tube/fluid-test-form.ts";
import { flushForm } from "#shared/record/tube/flush-form.ts";
import { acceptedForm, handoverForm } from "#shared/record/tube/handover-forms.ts";
import { openingForm } from "#shared/record/tube/opening-form.ts";
import { planForm } from "#shared/record/tube/plan-form.ts";
import { plannedExchangeForm } from "#shared/record/tube/planned-exchange-form.ts";
import { removalDecisionForm } from "#shared/record/tube/removal-decision-form.ts";
import { removalForm } from "#shared/record/tube/removal-form.ts";
import {
  downsizeForm,
  exchangeForm,
  newPunctureForm,
  salvageForm,
  upsizeForm,
} from "#shared/record/tube/renewal-form.ts";
import { repositionForm } from "#shared/record/tube/reposition-form.ts";
import { decisionDoneForm, reviewAskForm, reviewForm } from "#shared/record/tube/review-forms.ts";
import { suctionForm } from "#shared/record/tube/suction-form.ts";
import { tipForm } from "#shared/record/tube/tip-form.ts";
import { toldForm } from "#shared/record/tube/told-form.ts";
import { transferForm } from "#shared/record/tube/transfer-form.ts";
import { trialFailedForm, trialPassedForm, trialStartForm } from "#shared/record/tube/trial-forms.ts";
import {
  bledForm,
  blockedForm,
  brokenForm,
  infectedForm,
  leakingForm,
  unblockedForm,
} from "#shared/record/tube/trouble-forms.ts";
import { verifyForm } from "#shared/record/tube/verify-form.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { visitPayloads } from "#shared/tube/visit-payloads.ts";

/** Kinds that a form of their own records, visits apart: those are held against the clinic's rooms. An amendment is the form of the entry that it mends, with a reason. */
export type FormKind = Exclude<
  EventKind,
  | "dates confirmed"
  | "records joined"
  | "amended"
  | "voided"
  | "call attempted"
  | "red flag raised"
  | "red flag handed"
  | "red flag done"
  | keyof typeof visitPayloads
>;

type OpeningKind = "placed" | "taken over";

/** What a form of this kind may make: the opening form makes either kind, by where the tube came from. */
type Made<K extends FormKind> = K extends OpeningKind
  ? EntryOf<"placed"> | EntryOf<"taken over">
  : EntryOf<K>;

type Readable<E> = { readonly read: (texts: Texts, context: FormContext) => FormResult<E> };

/**
 * Every kind with the form that records it, for who reads any of them: server, import, seed. A screen imports the one form
 * that it shows.
 */
export const eventForms = {
  placed: openingForm,
  "taken over": openingForm,
  checked: checkForm,
  exchanged: exchangeForm,
  upsized: upsizeForm,
  downsized: downsizeForm,
  salvaged: salvageForm,
  "new puncture": newPunctureForm,
  capped: capForm,
  uncapped: uncapForm,
  "tip position": tipForm,
  "partly dislodged": partlyDislodgedForm,
  "fell out": fellOutForm,
  "not replaced": notReplacedForm,
  converted: conversionForm,
  removed: removalForm,
  died: deathForm,
  "facts noted": factsForm,
  verified: verifyForm,
  "clock dated": clockForm,
  "plan recorded": planForm,
  "exchange planned": plannedExchangeForm,
  "conditions noted": conditionsForm,
  "step assigned": assignForm,
  called: callForm,
  repositioned: repositionForm,
  flushed: flushForm,
  unblocked: unblockedForm,
  "clamp trial started": trialStartForm,
  "clamp trial passed": trialPassedForm,
  "clamp trial failed": trialFailedForm,
  "suction changed": suctionForm,
  "balloon checked": balloonCheckForm,
  "anchors removed": anchorsForm,
  blocked: blockedForm,
  leaking: leakingForm,
  infected: infectedForm,
  bled: bledForm,
  broken: brokenForm,
  "fluid tested": fluidTestForm,
  "removal decided": removalDecisionForm,
  "handed over": handoverForm,
  "accepted elsewhere": acceptedForm,
  "follow-up ended": endForm,
  transferred: transferForm,
  "hospice decided": hospiceForm,
  "whereabouts noted": whereaboutsForm,
  "clinical state noted": clinicalForm,
  "reconcile asked": reconcileAskForm,
  reconciled: reconcileForm,
  "reported out": reportedOutForm,
  "review asked": reviewAskForm,
  "review decided": reviewForm,
  "decision done": decisionDoneForm,
  "alarm closed": alarmClosedForm,
  "usual level accepted": usualLevelForm,
  "letter sent": letterForm,
  "not reached decided": notReachedForm,
  "told of the tube": toldForm,
} as const satisfies { readonly [K in FormKind]: Readable<Made<K>> };

export const formKinds = Object.keys(eventForms) as FormKind[];
