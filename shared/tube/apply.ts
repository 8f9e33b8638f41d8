import {
  type Applied,
  type Appliers,
  answered,
  endedBy,
  isFalse,
  isOut,
  type OneTubeEvent,
  type OneTubeKind,
  outUnderEarlier,
  restsOn,
  withMode,
} from "#shared/tube/applied.ts";
import { alarmAppliers } from "#shared/tube/apply-alarm.ts";
import { calledAbout } from "#shared/tube/apply-call.ts";
import { careAppliers, ownerOf } from "#shared/tube/apply-care.ts";
import { courseAppliers, needsTubeIn } from "#shared/tube/apply-course.ts";
import { doneBy, reviewAppliers } from "#shared/tube/apply-review.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import type { AnyEventOf, EventOf } from "#shared/tube/event.ts";
import { eventRules } from "#shared/tube/event-kinds.ts";
import type { Standing } from "#shared/tube/history.ts";
import { renewedFacts, withFacts } from "#shared/tube/open-record.ts";
import type { Trouble, TubeState } from "#shared/tube/state.ts";

type Renewed = AnyEventOf<"exchanged" | "upsized" | "downsized" | "salvaged" | "new puncture">;

/** What another catheter does not put right. */
const outlasts = ({ kind }: Trouble): boolean => kind === "infected" || kind === "bled";

/** Who was given what outlasts the catheter: a removal that was decided, and what a review decided. */
function ownersThatStand({ removal, decided, owners }: TubeState): TubeState["owners"] {
  const kinds = [...(removal === null ? [] : (["remove"] as const)), ...decided.map(({ what }) => what)];
  return Object.fromEntries(
    kinds.flatMap((kind) => (owners[kind] === undefined ? [] : [[kind, owners[kind]]])),
  );
}

function renewed(tube: TubeState, event: Renewed, at: Standing): Applied {
  const { facts, plan, elsewhere } = event.payload;
  const clock = { since: at.when, eventId: event.id, recordedOn: event.recordedOn };
  const next: TubeState = {
    ...renewedFacts(tube, facts, elsewhere !== null),
    status: "in",
    ending: null,
    dislodged: null,
    tipConfirmed: null,
    concerns: event.payload.difficult ? ["last exchange difficult"] : [],
    catheter: clock,
    ...(event.kind === "new puncture" && { tract: clock, tractBy: at.when.latest, usual: [] }),
    plan: plan === null ? null : { ...plan, eventId: event.id, recordedOn: event.recordedOn },
    plannedExchange: null,
    unverified: elsewhere === null ? null : { eventId: event.id, recordedOn: event.recordedOn },
    startedHere: elsewhere === null,
    called: null,
    checked: null,
    owners: ownersThatStand(tube),
    lastReview: null,
    reviewed: null,
    reviewAsked: null,
    troubles: tube.troubles.filter(outlasts),
    trial: answered(tube.trial),
    balloon: null,
    anchorsOut: event.kind === "new puncture" ? null : outUnderEarlier(tube),
    repositioned: null,
    toFindOut: elsewhere === null ? null : tube.toFindOut,
    pins: event.pins ?? tube.pins,
  };
  if (event.pins === null) return { tube: next, contradiction: "no-pins" };
  // A lost tube that is "exchanged" was in truth salvaged or newly punctured: the difference decides the tract's age.
  const lost = isOut(tube) && event.kind !== "salvaged" && event.kind !== "new puncture";
  return lost ? { tube: next, contradiction: "already-out" } : { tube: next };
}

function removed(tube: TubeState, event: EventOf<"removed">, at: Standing): Applied {
  const { whole, toldBy } = event.payload;
  const ending = endedBy(at);
  const unverified = { eventId: event.id, recordedOn: event.recordedOn };
  if (isFalse(whole)) return { tube: { ...tube, status: "fragment retained", ending } };
  const unseen = toldBy !== null || whole.certainty !== "confirmed";
  if (unseen) return { tube: { ...tube, status: "removal not confirmed", ending, unverified } };
  return { tube: { ...tube, status: "ended", ending } };
}

function dislodged(
  tube: TubeState,
  event: AnyEventOf<"fell out" | "partly dislodged">,
  at: Standing,
): Applied {
  const part = event.kind === "partly dislodged";
  const whole = event.kind === "fell out" ? event.payload.whole : unknownFact;
  const out = { eventId: event.id, when: at.when, recordedOn: event.recordedOn, part, whole };
  const externalLength =
    event.kind === "partly dislodged" ? event.payload.externalLength : tube.externalLength;
  if (isOut(tube)) return { tube, contradiction: "already-out" };
  // A tube that was told removed and now falls out was still in: it was told in error.
  const toldRemoved = tube.status === "removal not confirmed";
  const next: TubeState = {
    ...tube,
    dislodged: out,
    externalLength,
    status: part ? "in" : "out, undecided",
    ending: null,
    unverified: toldRemoved ? null : tube.unverified,
    troubles: part ? tube.troubles : tube.troubles.filter(outlasts),
  };
  return { tube: next };
}

function verified(tube: TubeState): Applied {
  const ended = tube.status === "removal not confirmed";
  return { tube: { ...tube, unverified: null, status: ended ? "ended" : tube.status } };
}

function dated(tube: TubeState, event: EventOf<"clock dated">): Applied {
  const { catheterSince, tractSince } = event.payload;
  const recordedOn = event.recordedOn;
  return {
    tube: {
      ...tube,
      catheter: { since: catheterSince, eventId: event.id, recordedOn },
      tract: tractSince === null ? tube.tract : { since: tractSince, eventId: event.id, recordedOn },
      tractBy: tube.tractBy ?? catheterSince.latest,
      pins: event.pins ?? tube.pins,
    },
  };
}

function checked(tube: TubeState, event: EventOf<"checked">, at: Standing): Applied {
  const plan = tube.plan?.act === "review" ? null : tube.plan;
  // A check that puts a partly dislodged tube back in order is a reposition, an entry of its own.
  return {
    tube: {
      ...tube,
      checked: { eventId: event.id, when: at.when },
      concerns: event.payload.concerns,
      plan,
      troubles: [],
      trial: answered(tube.trial),
    },
  };
}

function capping(tube: TubeState, event: AnyEventOf<"capped" | "uncapped">): Applied {
  if (event.kind === "capped")
    return {
      tube: withMode(tube, "capped"),
      ...(tube.mode === "capped" && { contradiction: "already-capped" as const }),
    };
  const next = withMode(tube, event.payload.mode);
  const shut = tube.mode === "capped" || tube.mode === "on a clamp trial";
  return shut ? { tube: next } : { tube: next, contradiction: "not-capped" };
}

function notReplaced(tube: TubeState, at: Standing): Applied {
  if (!isOut(tube)) return { tube, contradiction: "not-out" };
  const fragment = tube.dislodged !== null && isFalse(tube.dislodged.whole);
  return { tube: { ...tube, status: fragment ? "fragment retained" : "ended", ending: endedBy(at) } };
}

/** A new plan answers a trial, and takes the place of a removal that was decided before it. */
function planRecorded(tube: TubeState, event: EventOf<"plan recorded">): Applied {
  const plan = { ...event.payload.plan, eventId: event.id, recordedOn: event.recordedOn };
  return { tube: { ...tube, plan, removal: null, trial: answered(tube.trial) } };
}

function factsNoted(tube: TubeState, { payload }: EventOf<"facts noted">): Applied {
  const next = { ...withFacts(tube, payload.facts), side: payload.side ?? tube.side };
  return { tube: payload.mode === undefined ? next : withMode(next, payload.mode) };
}

/** What each kind makes of a tube. */
const appliers: Appliers<OneTubeKind> = {
  exchanged: renewed,
  upsized: renewed,
  downsized: renewed,
  salvaged: renewed,
  "new puncture": renewed,
  removed,
  "not replaced": (tube, _event, at) => notReplaced(tube, at),
  "fell out": dislodged,
  "partly dislodged": dislodged,
  capped: capping,
  uncapped: capping,
  checked,
  verified,
  "clock dated": dated,
  called: (tube, event, at) => ({ tube: calledAbout(tube, event, at) }),
  "told of the tube": (tube, event) => {
    const { whom, language } = event.payload;
    return { tube: { ...tube, told: { ...restsOn(event), whom, language } } };
  },
  "tip position": (tube, { payload }, { when }) => ({
    tube: { ...tube, tipConfirmed: { when, inPlace: payload.inPlace } },
  }),
  "facts noted": factsNoted,
  "plan recorded": planRecorded,
  "exchange planned": (tube, { id, payload }) => ({
    tube: { ...tube, plannedExchange: { ...payload, eventId: id } },
  }),
  "step assigned": (tube, { payload }) => ({
    tube: { ...tube, owners: { ...tube.owners, [payload.step]: ownerOf(payload.owner) } },
  }),
  "dates confirmed": (tube, { pins }) => ({ tube: { ...tube, pins: pins ?? tube.pins } }),
  ...courseAppliers,
  ...careAppliers,
  ...reviewAppliers,
  ...alarmAppliers,
};

/** What would put a tube where a fragment of the old one is still inside, and hide it. */
const hidesFragment = ({ kind }: OneTubeEvent): boolean =>
  eventRules[kind].resets !== "neither" ||
  kind === "fell out" ||
  kind === "partly dislodged" ||
  kind === "broken" ||
  needsTubeIn.has(kind);

/** Applies one event to the one tube that it names. Total: whatever the state, a tube comes back. */
export function applyToTube(tube: TubeState, event: OneTubeEvent, at: Standing): Applied {
  if (tube.status === "fragment retained" && hidesFragment(event))
    return { tube, contradiction: "fragment-inside" };
  const apply: (tube: TubeState, event: never, at: Standing) => Applied = appliers[event.kind];
  return apply(doneBy(tube, event), event as never, at);
}
