import type { ContradictionCode } from "#shared/tube/contradiction-codes.ts";
import type { AnyEventOf, EventOf } from "#shared/tube/event.ts";
import type { Standing } from "#shared/tube/history.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { type ActOnTube, isOpenVisit, openTubes, type Visit } from "#shared/visit/visit.ts";
import type { VisitAct } from "#shared/visit/visit-acts.ts";

export type VisitEvent = AnyEventOf<"visit booked" | "visit moved" | "visit noted" | "visit prepared">;

/** Another catheter, or none any more. */
const renews: readonly EventKind[] = [
  "exchanged",
  "upsized",
  "downsized",
  "salvaged",
  "new puncture",
  "converted",
];
const takesOut: readonly EventKind[] = ["removed", "not replaced"];
const looksAt: readonly EventKind[] = ["checked", "repositioned", "tip position"];

/** Which entries of a tube say that what a visit was for is done, whenever that was. */
const answers: Readonly<Record<VisitAct, readonly EventKind[]>> = {
  exchange: [...renews, ...takesOut],
  check: [...looksAt, ...renews, ...takesOut],
  removal: takesOut,
};
/** On the day of the visit, and once the patient is there, whatever was done with the tube answers it. */
const answersThere: readonly EventKind[] = [...looksAt, ...renews, ...takesOut, "unblocked"];

const slipsOut: readonly EventKind[] = ["fell out", "partly dislodged"];

function booked({ id, recordedOn, payload }: EventOf<"visit booked">): Visit {
  const { tubes, ...rest } = payload;
  return {
    ...rest,
    id,
    tubes: tubes.map(({ tube: tubeId, act }) => ({ tubeId, act })),
    answered: [],
    revision: 0,
    moved: 0,
    by: null,
    reason: null,
    prepared: [],
    bookedOn: recordedOn,
    eventId: id,
    recordedOn,
  };
}

type Later = Exclude<VisitEvent, EventOf<"visit booked">>;

function changed(visit: Visit, event: Later): Visit {
  const rests = { eventId: event.id, recordedOn: event.recordedOn };
  switch (event.kind) {
    case "visit moved": {
      const { visit: _visit, ...slot } = event.payload;
      const state = visit.state === "proposed" ? "proposed" : "booked";
      const { revision, moved } = visit;
      return {
        ...visit,
        ...rests,
        ...slot,
        state,
        revision: revision + 1,
        moved: moved + 1,
      };
    }
    case "visit noted": {
      const { state, by, reason } = event.payload;
      return { ...visit, ...rests, state, by, reason, revision: visit.revision + 1 };
    }
    case "visit prepared": {
      const { thing, state, by, says } = event.payload;
      const others = visit.prepared.filter((one) => one.thing !== thing);
      return { ...visit, prepared: [...others, { thing, state, by, says, eventId: event.id }] };
    }
  }
}

type Noted = { readonly visits: readonly Visit[]; readonly contradiction?: ContradictionCode };

/** What an entry about a visit makes of the visits. Total: what speaks of none, or of one that is over, is said. */
export function notedOfVisit(visits: readonly Visit[], event: VisitEvent): Noted {
  if (event.kind === "visit booked") return { visits: [...visits, booked(event)] };
  const visit = visits.find(({ id }) => id === event.payload.visit);
  if (visit === undefined) return { visits, contradiction: "visit-not-booked" };
  if (!isOpenVisit(visit)) return { visits, contradiction: "visit-over" };
  return { visits: visits.map((one) => (one === visit ? changed(visit, event) : one)) };
}

/** The patient as far as visits ask. */
type InCare = { readonly tubes: ReadonlyMap<string, Pick<TubeState, "status">>; readonly died: boolean };

/** The patient is there, or the entry is of the day of the visit or a later one. */
const isThere = ({ state, on }: Visit, { event, when }: Pick<Standing, "event" | "when">): boolean =>
  state === "arrived" || (when.latest ?? event.recordedOn) >= on;

/** Whether an entry says what came of one tube of a visit. */
function answerOf(visit: Visit, { tubeId, act }: ActOnTube, { event, when }: Standing): boolean {
  if (!event.tubes.includes(tubeId)) return false;
  if (answers[act].includes(event.kind)) return true;
  return isThere(visit, { event, when }) && answersThere.includes(event.kind);
}

function afterEntry(visit: Visit, at: Standing, { tubes, died }: InCare): Visit {
  const found = openTubes(visit).flatMap((one) => {
    if (answerOf(visit, one, at)) return [{ tubeId: one.tubeId, did: true }];
    return tubes.get(one.tubeId)?.status === "ended" ? [{ tubeId: one.tubeId, did: false }] : [];
  });
  const { event } = at;
  const slipped =
    slipsOut.includes(event.kind) && visit.tubes.some(({ tubeId }) => event.tubes.includes(tubeId));
  if (found.length === 0) return slipped && !visit.urgent ? { ...visit, urgent: true } : visit;
  const answered = [...visit.answered, ...found];
  const next = { ...visit, answered };
  if (answered.length < visit.tubes.length) return next;
  const rests = { eventId: event.id, recordedOn: event.recordedOn, revision: visit.revision + 1 };
  if (visit.state === "did not attend") return next;
  const did = answered.some((one) => one.did);
  if (did && isThere(visit, at)) return { ...next, ...rests, state: "done" };
  const reason = did ? "done before its day" : died ? "died" : "the record ended";
  return { ...next, ...rests, state: "cancelled", by: null, reason };
}

/** What nobody came to still waits for its tubes. */
const waits = (visit: Visit): boolean => isOpenVisit(visit) || visit.state === "did not attend";

/**
 * The visits after an entry of the patient: one whose tubes are all answered for is done, without a word of its own; one of which nothing
 * is left to do is cancelled by what ended the records; one whose tube slips out turns urgent.
 */
export const answeredVisits = (visits: readonly Visit[], at: Standing, care: InCare): readonly Visit[] =>
  visits.some(waits) ? visits.map((visit) => (waits(visit) ? afterEntry(visit, at, care) : visit)) : visits;
