import { type Fact, known, unknownFact } from "#shared/tube/certainty.ts";
import type { EventOf, TubeEvent } from "#shared/tube/event.ts";
import { eventRules } from "#shared/tube/event-kinds.ts";
import type { Standing } from "#shared/tube/history.ts";
import { renewedFacts, withFacts } from "#shared/tube/open-record.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { ContradictionCode, Ending, TubeState } from "#shared/tube/state.ts";

/** What one event makes of one open tube, and what in it cannot be true. The tube always comes back. */
export type Applied = { readonly tube: TubeState; readonly contradiction?: ContradictionCode };

/** Kinds that happen to one tube whose record is open. */
export type OneTubeKind = Exclude<
  EventKind,
  "placed" | "taken over" | "converted" | "died" | "conditions noted" | "amended" | "voided"
>;
export type OneTubeEvent = Extract<TubeEvent, { kind: OneTubeKind }>;

type Renewed = EventOf<"exchanged"> | EventOf<"upsized"> | EventOf<"salvaged"> | EventOf<"new puncture">;

const isOut = (tube: TubeState): boolean => tube.status === "out, undecided";

export const endedBy = ({ event, when }: Standing): Ending => ({
  kind: event.kind,
  eventId: event.id,
  when,
  recordedOn: event.recordedOn,
});

const isFalse = (fact: Fact<boolean>): boolean => known(fact) === false;

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
    ...(event.kind === "new puncture" && { tract: clock, tractBy: at.when.latest }),
    plan: plan === null ? null : { ...plan, eventId: event.id, recordedOn: event.recordedOn },
    plannedExchange: null,
    unverified: elsewhere === null ? null : { eventId: event.id, recordedOn: event.recordedOn },
    startedHere: elsewhere === null,
    called: null,
    checked: null,
    owners: {},
    pins: event.pins ?? tube.pins,
  };
  if (event.pins === null) return { tube: next, contradiction: "no-pins" };
  // A lost tube that is "exchanged" was in truth salvaged or newly punctured: the difference decides the tract's age.
  const lost = isOut(tube) && (event.kind === "exchanged" || event.kind === "upsized");
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
  event: EventOf<"fell out"> | EventOf<"partly dislodged">,
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

function called(tube: TubeState, event: EventOf<"called">): Applied {
  const attempts = (tube.called?.attempts ?? 0) + 1;
  const reached = tube.called?.reached === true || event.payload.outcome !== "not reached";
  return { tube: { ...tube, called: { eventId: event.id, reached, attempts } } };
}

function checked(tube: TubeState, event: EventOf<"checked">, at: Standing): Applied {
  const plan = tube.plan?.act === "review" ? null : tube.plan;
  // A check that puts a partly dislodged tube back in order is a reposition; only a renewal closes that step.
  return {
    tube: { ...tube, checked: { eventId: event.id, when: at.when }, concerns: event.payload.concerns, plan },
  };
}

function capping(tube: TubeState, event: EventOf<"capped"> | EventOf<"uncapped">): Applied {
  if (event.kind === "capped")
    return {
      tube: { ...tube, mode: "capped" },
      ...(tube.mode === "capped" && { contradiction: "already-capped" as const }),
    };
  const next = { ...tube, mode: event.payload.mode };
  return tube.mode === "capped" ? { tube: next } : { tube: next, contradiction: "not-capped" };
}

/** What would put a tube where a fragment of the old one is still inside, and hide it. */
const hidesFragment = ({ kind }: OneTubeEvent): boolean =>
  eventRules[kind].resets !== "neither" || kind === "fell out" || kind === "partly dislodged";

/** Applies one event to the one tube that it names. Total: whatever the state, a tube comes back. */
export function applyToTube(tube: TubeState, event: OneTubeEvent, at: Standing): Applied {
  if (tube.status === "fragment retained" && hidesFragment(event))
    return { tube, contradiction: "fragment-inside" };
  switch (event.kind) {
    case "exchanged":
    case "upsized":
    case "salvaged":
    case "new puncture":
      return renewed(tube, event, at);
    case "removed":
      return removed(tube, event, at);
    case "not replaced":
      return notReplaced(tube, at);
    case "fell out":
    case "partly dislodged":
      return dislodged(tube, event, at);
    case "capped":
    case "uncapped":
      return capping(tube, event);
    case "checked":
      return checked(tube, event, at);
    case "verified":
      return verified(tube);
    case "clock dated":
      return dated(tube, event);
    case "called":
      return called(tube, event);
    case "tip position":
      return { tube: { ...tube, tipConfirmed: { when: at.when, inPlace: event.payload.inPlace } } };
    case "facts noted":
      return { tube: { ...withFacts(tube, event.payload.facts), mode: event.payload.mode ?? tube.mode } };
    case "plan recorded":
      return {
        tube: { ...tube, plan: { ...event.payload.plan, eventId: event.id, recordedOn: event.recordedOn } },
      };
    case "exchange planned":
      return { tube: { ...tube, plannedExchange: { ...event.payload, eventId: event.id } } };
    case "step assigned":
      return { tube: withOwner(tube, event) };
    case "dates confirmed":
      return { tube: { ...tube, pins: event.pins ?? tube.pins } };
  }
}

function notReplaced(tube: TubeState, at: Standing): Applied {
  if (!isOut(tube)) return { tube, contradiction: "not-out" };
  const fragment = tube.dislodged !== null && isFalse(tube.dislodged.whole);
  return { tube: { ...tube, status: fragment ? "fragment retained" : "ended", ending: endedBy(at) } };
}

function withOwner(tube: TubeState, event: EventOf<"step assigned">): TubeState {
  const { owner, step } = event.payload;
  const staffId = "staffId" in owner ? owner.staffId : null;
  return { ...tube, owners: { ...tube.owners, [step]: { role: owner.role, staffId } } };
}
