import { procedure, router } from "#server/api/trpc.ts";
import { confirmDates } from "#server/dates/confirm-dates.ts";
import { besideForm } from "#server/record/beside-form.ts";
import { joinRecords } from "#server/record/join-records.ts";
import { openAmendment } from "#server/record/open-amendment.ts";
import { recordAmendment } from "#server/record/record-amendment.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { voidEntry } from "#server/record/void-entry.ts";
import {
  aboutPatientSchema,
  aboutTubeSchema,
  amendingQuerySchema,
  amendingSchema,
  confirmingSchema,
  joiningSchema,
  undoSchema,
} from "#shared/record/act.ts";
import type { FormKind } from "#shared/record/event-forms.ts";

/** What is recorded changes a patient's stream, which names who did it; nothing is shown. */
const recording = procedure.meta({ subject: { kind: "none" } });

const ofPatient = (form: FormKind) =>
  recording.input(aboutPatientSchema).mutation(({ ctx, input }) => recordEvent(ctx, form, input));

const ofTube = (form: FormKind) =>
  recording.input(aboutTubeSchema).mutation(({ ctx, input }) => recordEvent(ctx, form, input));

/** One procedure for each form, so that the access table says line by line who may record what. */
export const recordRouter = router({
  beside: recording.query(({ ctx }) => besideForm(ctx.db)),
  tube: ofPatient("placed"),
  conditions: ofPatient("conditions noted"),
  died: ofPatient("died"),
  checked: ofTube("checked"),
  exchanged: ofTube("exchanged"),
  upsized: ofTube("upsized"),
  downsized: ofTube("downsized"),
  salvaged: ofTube("salvaged"),
  newPuncture: ofTube("new puncture"),
  capped: ofTube("capped"),
  uncapped: ofTube("uncapped"),
  tipPosition: ofTube("tip position"),
  partlyDislodged: ofTube("partly dislodged"),
  fellOut: ofTube("fell out"),
  notReplaced: ofTube("not replaced"),
  converted: ofTube("converted"),
  removed: ofTube("removed"),
  factsNoted: ofTube("facts noted"),
  verified: ofTube("verified"),
  clockDated: ofTube("clock dated"),
  planRecorded: ofTube("plan recorded"),
  exchangePlanned: ofTube("exchange planned"),
  stepAssigned: ofTube("step assigned"),
  repositioned: ofTube("repositioned"),
  flushed: ofTube("flushed"),
  unblocked: ofTube("unblocked"),
  clampTrialStarted: ofTube("clamp trial started"),
  clampTrialPassed: ofTube("clamp trial passed"),
  clampTrialFailed: ofTube("clamp trial failed"),
  suctionChanged: ofTube("suction changed"),
  balloonChecked: ofTube("balloon checked"),
  anchorsRemoved: ofTube("anchors removed"),
  blocked: ofTube("blocked"),
  leaking: ofTube("leaking"),
  infected: ofTube("infected"),
  bled: ofTube("bled"),
  broken: ofTube("broken"),
  fluidTested: ofTube("fluid tested"),
  removalDecided: ofTube("removal decided"),
  reviewAsked: ofTube("review asked"),
  reviewDecided: ofTube("review decided"),
  decisionDone: ofTube("decision done"),
  handedOver: ofTube("handed over"),
  acceptedElsewhere: ofTube("accepted elsewhere"),
  followUpEnded: ofTube("follow-up ended"),
  transferred: ofTube("transferred"),
  alarmClosed: ofTube("alarm closed"),
  usualLevelAccepted: ofTube("usual level accepted"),
  toldOfTheTube: ofTube("told of the tube"),
  letterSent: ofPatient("letter sent"),
  notReachedDecided: ofPatient("not reached decided"),
  hospiceDecided: ofPatient("hospice decided"),
  whereaboutsNoted: ofPatient("whereabouts noted"),
  clinicalStateNoted: ofPatient("clinical state noted"),
  reconcileAsked: ofPatient("reconcile asked"),
  reconciled: ofPatient("reconciled"),
  reportedOut: ofPatient("reported out"),
  joined: recording.input(joiningSchema).mutation(({ ctx, input }) => joinRecords(ctx, input)),
  amended: recording.input(amendingSchema).mutation(({ ctx, input }) => recordAmendment(ctx, input)),
  voided: recording.input(amendingSchema).mutation(({ ctx, input }) => voidEntry(ctx, input)),
  amending: procedure
    .meta({ subject: { kind: "patient", key: "patientId" } })
    .input(amendingQuerySchema)
    .query(({ ctx, input }) => openAmendment(ctx.db, input)),
  undone: recording.input(undoSchema).mutation(({ ctx, input }) => undoAct(ctx, input)),
  datesConfirmed: recording.input(confirmingSchema).mutation(({ ctx, input }) => confirmDates(ctx, input)),
});
