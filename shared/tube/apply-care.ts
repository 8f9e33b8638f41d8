import { type Applied, type Appliers, answered, endedBy, isOut, restsOn } from "#shared/tube/applied.ts";
import type { EventOf } from "#shared/tube/event.ts";
import type { Standing } from "#shared/tube/history.ts";
import type { Owner, TubeState } from "#shared/tube/state.ts";

type CareKind = "removal decided" | "handed over" | "accepted elsewhere" | "follow-up ended" | "transferred";

/** Who takes a step, as an entry names it: a role, or one person of it. */
export const ownerOf = (owner: EventOf<"removal decided">["payload"]["owner"]): Owner => ({
  role: owner.role,
  staffId: "staffId" in owner ? owner.staffId : null,
});

/**
 * Stands in the place of a plan to remove or to review, which led to it. An exchange that is planned or due stands on: a decision
 * closes only what it names.
 */
function removalDecided(tube: TubeState, event: EventOf<"removal decided">): Applied {
  const { by, decidedBy, reason, owner } = event.payload;
  const next: TubeState = {
    ...tube,
    removal: { ...restsOn(event), by, decidedBy, reason },
    plan: tube.plan?.act === "exchange" ? tube.plan : null,
    trial: answered(tube.trial),
    owners: { ...tube.owners, remove: ownerOf(owner) },
  };
  return isOut(tube) ? { tube, contradiction: "already-out" } : { tube: next };
}

/** A named person elsewhere has the care, or a named clinician decided: that ends the record, whatever was open. */
const ended = (tube: TubeState, at: Standing): Applied => ({
  tube: { ...tube, status: "ended", ending: endedBy(at), handover: null },
});

export const careAppliers: Appliers<CareKind> = {
  "removal decided": removalDecided,
  "handed over": (tube, event) => ({
    tube: { ...tube, handover: { ...restsOn(event), to: event.payload.to, person: event.payload.person } },
  }),
  "accepted elsewhere": (tube, _event, at) => ended(tube, at),
  "follow-up ended": (tube, _event, at) => ended(tube, at),
  transferred: (tube, event) => {
    const { findOut: what, askWhom } = event.payload;
    return { tube: { ...tube, toFindOut: { ...restsOn(event), what, askWhom } } };
  },
};
