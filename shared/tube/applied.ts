import { type Fact, known } from "#shared/tube/certainty.ts";
import type { ContradictionCode } from "#shared/tube/contradiction-codes.ts";
import type { EventOf, TubeEvent } from "#shared/tube/event.ts";
import type { Standing } from "#shared/tube/history.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import { saysNone, skinHoldIn } from "#shared/tube/skin-hold.ts";
import type { Ending, RestsOn, Trial, TubeState } from "#shared/tube/state.ts";
import type { Mode } from "#shared/tube/vocabulary.ts";

/** What one event makes of one open tube, and what in it cannot be true. The tube always comes back. */
export type Applied = { readonly tube: TubeState; readonly contradiction?: ContradictionCode };

/** Kinds that speak of the patient, or that open a record. */
type OtherKind =
  | "placed"
  | "taken over"
  | "converted"
  | "died"
  | "conditions noted"
  | "hospice decided"
  | "whereabouts noted"
  | "clinical state noted"
  | "reconcile asked"
  | "reconciled"
  | "reported out"
  | "records joined"
  | "visit booked"
  | "visit moved"
  | "visit noted"
  | "visit prepared"
  | "call attempted"
  | "letter sent"
  | "not reached decided"
  | "red flag raised"
  | "red flag handed"
  | "red flag done"
  | "amended"
  | "voided";

/** Kinds that happen to one tube whose record is open. */
export type OneTubeKind = Exclude<EventKind, OtherKind>;
export type OneTubeEvent = Extract<TubeEvent, { kind: OneTubeKind }>;

/** What each kind makes of a tube. */
export type Appliers<K extends OneTubeKind> = {
  readonly [Kind in K]: (tube: TubeState, event: EventOf<Kind>, at: Standing) => Applied;
};

export const isOut = (tube: TubeState): boolean => tube.status === "out, undecided";

export const isFalse = (fact: Fact<boolean>): boolean => known(fact) === false;

export const restsOn = ({ id, recordedOn }: Pick<TubeEvent, "id" | "recordedOn">): RestsOn => ({
  eventId: id,
  recordedOn,
});

export const endedBy = ({ event, when }: Standing): Ending => ({
  kind: event.kind,
  eventId: event.id,
  when,
  recordedOn: event.recordedOn,
});

/** A trial that came out and is answered by what was done next; one that runs goes on. */
export const answered = (trial: Trial | null): Trial | null => (trial?.state === "running" ? trial : null);

/** Set to another mode: a trial that was running is over, without having come out. */
export const withMode = (tube: TubeState, mode: Mode): TubeState => ({
  ...tube,
  mode,
  trial: mode === "on a clamp trial" || tube.trial?.state !== "running" ? tube.trial : null,
});

/** Another catheter in the tract puts no anchors in again: where they came out under the one before, or were said to be none, there are none. */
export function outUnderEarlier({ fixation, anchorsOut }: TubeState): TubeState["anchorsOut"] {
  const said = known(fixation);
  if (said !== undefined && skinHoldIn(said) === "anchors") return null;
  return anchorsOut !== null || (said !== undefined && saysNone(said, "anchors")) ? "an earlier one" : null;
}
