"use client";

import dynamic from "next/dynamic";
import type { ComponentType, ReactNode } from "react";
import { EventForm, type ShownForm } from "#app/record/event-form.tsx";
import type { EventFormProps } from "#app/record/form-props.ts";
import type { FormKind } from "#shared/record/event-forms.ts";

/** A form's data as a component. */
const shown = <V,>(form: ShownForm<V>): { default: ComponentType<EventFormProps> } => ({
  default: (props) => <EventForm {...props} form={form} />,
});

const opening = dynamic(() =>
  import("#shared/record/tube/opening-form.ts").then(({ openingForm }) => shown(openingForm)),
);

/** Each form with the part of the script that holds it: a page loads its own and no other. */
const forms: { readonly [K in FormKind]: ComponentType<EventFormProps> } = {
  placed: opening,
  "taken over": opening,
  checked: dynamic(() => import("#shared/record/tube/check-form.ts").then((m) => shown(m.checkForm))),
  exchanged: dynamic(() => import("#shared/record/tube/renewal-form.ts").then((m) => shown(m.exchangeForm))),
  upsized: dynamic(() => import("#shared/record/tube/renewal-form.ts").then((m) => shown(m.upsizeForm))),
  downsized: dynamic(() => import("#shared/record/tube/renewal-form.ts").then((m) => shown(m.downsizeForm))),
  salvaged: dynamic(() => import("#shared/record/tube/renewal-form.ts").then((m) => shown(m.salvageForm))),
  "new puncture": dynamic(() =>
    import("#shared/record/tube/renewal-form.ts").then((m) => shown(m.newPunctureForm)),
  ),
  capped: dynamic(() => import("#shared/record/tube/capping-forms.ts").then((m) => shown(m.capForm))),
  uncapped: dynamic(() => import("#shared/record/tube/capping-forms.ts").then((m) => shown(m.uncapForm))),
  "tip position": dynamic(() => import("#shared/record/tube/tip-form.ts").then((m) => shown(m.tipForm))),
  "partly dislodged": dynamic(() =>
    import("#shared/record/tube/dislodged-forms.ts").then((m) => shown(m.partlyDislodgedForm)),
  ),
  "fell out": dynamic(() =>
    import("#shared/record/tube/dislodged-forms.ts").then((m) => shown(m.fellOutForm)),
  ),
  "not replaced": dynamic(() =>
    import("#shared/record/tube/dislodged-forms.ts").then((m) => shown(m.notReplacedForm)),
  ),
  converted: dynamic(() =>
    import("#shared/record/tube/conversion-form.ts").then((m) => shown(m.conversionForm)),
  ),
  removed: dynamic(() => import("#app/record/removal.tsx").then((m) => ({ default: m.Removal }))),
  died: dynamic(() => import("#shared/record/patient/death-form.ts").then((m) => shown(m.deathForm))),
  "facts noted": dynamic(() => import("#shared/record/tube/facts-form.ts").then((m) => shown(m.factsForm))),
  verified: dynamic(() => import("#shared/record/tube/verify-form.ts").then((m) => shown(m.verifyForm))),
  "clock dated": dynamic(() => import("#shared/record/tube/clock-form.ts").then((m) => shown(m.clockForm))),
  "plan recorded": dynamic(() => import("#shared/record/tube/plan-form.ts").then((m) => shown(m.planForm))),
  "exchange planned": dynamic(() =>
    import("#app/record/planned-exchange.tsx").then((m) => ({ default: m.PlannedExchange })),
  ),
  "conditions noted": dynamic(() =>
    import("#shared/record/patient/conditions-form.ts").then((m) => shown(m.conditionsForm)),
  ),
  "step assigned": dynamic(() =>
    import("#shared/record/tube/assign-form.ts").then((m) => shown(m.assignForm)),
  ),
  called: dynamic(() => import("#shared/record/tube/call-form.ts").then((m) => shown(m.callForm))),
  repositioned: dynamic(() =>
    import("#shared/record/tube/reposition-form.ts").then((m) => shown(m.repositionForm)),
  ),
  flushed: dynamic(() => import("#shared/record/tube/flush-form.ts").then((m) => shown(m.flushForm))),
  unblocked: dynamic(() =>
    import("#shared/record/tube/trouble-forms.ts").then((m) => shown(m.unblockedForm)),
  ),
  "clamp trial started": dynamic(() =>
    import("#shared/record/tube/trial-forms.ts").then((m) => shown(m.trialStartForm)),
  ),
  "clamp trial passed": dynamic(() =>
    import("#shared/record/tube/trial-forms.ts").then((m) => shown(m.trialPassedForm)),
  ),
  "clamp trial failed": dynamic(() =>
    import("#shared/record/tube/trial-forms.ts").then((m) => shown(m.trialFailedForm)),
  ),
  "suction changed": dynamic(() =>
    import("#shared/record/tube/suction-form.ts").then((m) => shown(m.suctionForm)),
  ),
  "balloon checked": dynamic(() =>
    import("#shared/record/tube/balloon-check-form.ts").then((m) => shown(m.balloonCheckForm)),
  ),
  "anchors removed": dynamic(() =>
    import("#shared/record/tube/anchors-form.ts").then((m) => shown(m.anchorsForm)),
  ),
  blocked: dynamic(() => import("#shared/record/tube/trouble-forms.ts").then((m) => shown(m.blockedForm))),
  leaking: dynamic(() => import("#shared/record/tube/trouble-forms.ts").then((m) => shown(m.leakingForm))),
  infected: dynamic(() => import("#shared/record/tube/trouble-forms.ts").then((m) => shown(m.infectedForm))),
  bled: dynamic(() => import("#shared/record/tube/trouble-forms.ts").then((m) => shown(m.bledForm))),
  broken: dynamic(() => import("#shared/record/tube/trouble-forms.ts").then((m) => shown(m.brokenForm))),
  "fluid tested": dynamic(() =>
    import("#shared/record/tube/fluid-test-form.ts").then((m) => shown(m.fluidTestForm)),
  ),
  "removal decided": dynamic(() =>
    import("#shared/record/tube/removal-decision-form.ts").then((m) => shown(m.removalDecisionForm)),
  ),
  "handed over": dynamic(() =>
    import("#shared/record/tube/handover-forms.ts").then((m) => shown(m.handoverForm)),
  ),
  "accepted elsewhere": dynamic(() =>
    import("#shared/record/tube/handover-forms.ts").then((m) => shown(m.acceptedForm)),
  ),
  "follow-up ended": dynamic(() => import("#shared/record/tube/end-form.ts").then((m) => shown(m.endForm))),
  "review asked": dynamic(() =>
    import("#shared/record/tube/review-forms.ts").then((m) => shown(m.reviewAskForm)),
  ),
  "review decided": dynamic(() =>
    import("#shared/record/tube/review-forms.ts").then((m) => shown(m.reviewForm)),
  ),
  "decision done": dynamic(() =>
    import("#shared/record/tube/review-forms.ts").then((m) => shown(m.decisionDoneForm)),
  ),
  transferred: dynamic(() =>
    import("#shared/record/tube/transfer-form.ts").then((m) => shown(m.transferForm)),
  ),
  "alarm closed": dynamic(() =>
    import("#shared/record/tube/alarm-forms.ts").then((m) => shown(m.alarmClosedForm)),
  ),
  "usual level accepted": dynamic(() =>
    import("#shared/record/tube/alarm-forms.ts").then((m) => shown(m.usualLevelForm)),
  ),
  "letter sent": dynamic(() =>
    import("#shared/record/patient/letter-form.ts").then((m) => shown(m.letterForm)),
  ),
  "not reached decided": dynamic(() =>
    import("#shared/record/patient/not-reached-form.ts").then((m) => shown(m.notReachedForm)),
  ),
  "told of the tube": dynamic(() =>
    import("#shared/record/tube/told-form.ts").then((m) => shown(m.toldForm)),
  ),
  "hospice decided": dynamic(() =>
    import("#shared/record/patient/hospice-form.ts").then((m) => shown(m.hospiceForm)),
  ),
  "whereabouts noted": dynamic(() =>
    import("#shared/record/patient/whereabouts-form.ts").then((m) => shown(m.whereaboutsForm)),
  ),
  "clinical state noted": dynamic(() =>
    import("#shared/record/patient/clinical-form.ts").then((m) => shown(m.clinicalForm)),
  ),
  "reconcile asked": dynamic(() =>
    import("#shared/record/patient/reconcile-forms.ts").then((m) => shown(m.reconcileAskForm)),
  ),
  "reported out": dynamic(() =>
    import("#shared/record/patient/reported-out-form.ts").then((m) => shown(m.reportedOutForm)),
  ),
  reconciled: dynamic(() =>
    import("#shared/record/patient/reconcile-forms.ts").then((m) => shown(m.reconcileForm)),
  ),
};

/** The form of this kind. */
export function RecordEvent(props: EventFormProps): ReactNode {
  const Form = forms[props.kind];
  return <Form {...props} />;
}
