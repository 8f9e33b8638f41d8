import { type DecidedKind, isDecidedKind } from "#shared/review/decisions.ts";
import {
  type Applied,
  type Appliers,
  answered,
  isOut,
  type OneTubeEvent,
  restsOn,
} from "#shared/tube/applied.ts";
import { ownerOf } from "#shared/tube/apply-care.ts";
import type { EventOf } from "#shared/tube/event.ts";
import type { Standing } from "#shared/tube/history.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { Decided, TubeState } from "#shared/tube/state.ts";

type ReviewKind = "review asked" | "review decided" | "decision done";

/** What is done by being recorded. A second drain, imaging, a referral are told by `decision done`. */
const doneByKind: Partial<Record<EventKind, DecidedKind>> = {
  "suction changed": "to suction",
  repositioned: "reposition",
  upsized: "upsize",
  downsized: "downsize",
  checked: "tube check",
  "fluid tested": "fluid tests",
  "clamp trial started": "cap or clamp trial",
  capped: "cap or clamp trial",
  "handed over": "hand over",
};

const without = (tube: TubeState, kinds: readonly string[]): TubeState =>
  tube.decided.some(({ what }) => kinds.includes(what))
    ? { ...tube, decided: tube.decided.filter(({ what }) => !kinds.includes(what)) }
    : tube;

/** The tube without the decided step that this entry is the doing of. */
export function doneBy(tube: TubeState, event: OneTubeEvent): TubeState {
  const what =
    event.kind === "facts noted" && event.payload.facts.flushOrder !== undefined
      ? "flush differently"
      : doneByKind[event.kind];
  return what === undefined ? tube : without(tube, [what]);
}

/** What is decided anew stands in the place of what was decided before it. */
function decidedNow(tube: TubeState, event: EventOf<"review decided">): readonly Decided[] {
  const { decided, decidedBy, words, closes } = event.payload;
  const now = decided.flatMap(({ what, by }): Decided[] =>
    isDecidedKind(what) ? [{ ...restsOn(event), what, by, decidedBy, words }] : [],
  );
  const gone: readonly string[] = [...closes, ...now.map(({ what }) => what)];
  return [...tube.decided.filter(({ what }) => !gone.includes(what)), ...now];
}

function ownersNow(tube: TubeState, { payload }: EventOf<"review decided">): TubeState["owners"] {
  const given = payload.decided.map(({ what, owner }) => [
    what === "leave in" ? "review" : what,
    ownerOf(owner),
  ]);
  return { ...tube.owners, ...Object.fromEntries(given) };
}

/**
 * What was decided becomes steps; closed is only what is named. A review that was due is answered when it is named or set anew; a plan
 * to review led to this, a plan to exchange stands.
 */
function reviewDecided(tube: TubeState, event: EventOf<"review decided">, { when }: Standing): Applied {
  const { decided, decidedBy, words, closes, evidence } = event.payload;
  const dayOf = (decision: "leave in" | "remove") =>
    decided.find(({ what }) => what === decision)?.by ?? null;
  const [next, outBy] = [dayOf("leave in"), dayOf("remove")];
  const answers = closes.includes("review") || next !== null;
  const after: TubeState = {
    ...tube,
    decided: decidedNow(tube, event),
    owners: ownersNow(tube, event),
    trial: answered(tube.trial),
    lastReview: { ...restsOn(event), when, decidedBy, evidence },
    ...(answers && {
      reviewed: { ...restsOn(event), when, next },
      reviewAsked: null,
      plan: tube.plan?.act === "review" ? null : tube.plan,
    }),
    ...(outBy !== null && {
      removal: { ...restsOn(event), by: outBy, decidedBy, reason: words },
      plan: tube.plan?.act === "exchange" ? tube.plan : null,
    }),
  };
  return isOut(tube) ? { tube, contradiction: "already-out" } : { tube: after };
}

export const reviewAppliers: Appliers<ReviewKind> = {
  "review asked": (tube, event) => ({
    tube: { ...tube, reviewAsked: { ...restsOn(event), ...event.payload } },
  }),
  "review decided": reviewDecided,
  "decision done": (tube, { payload }) => ({ tube: without(tube, [payload.what]) }),
};
