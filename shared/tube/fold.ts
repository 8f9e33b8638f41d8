import { type CallLog, nothingTried } from "#shared/call/call-log.ts";
import type { DoneFlag, OpenFlag } from "#shared/call/red-flag.ts";
import { endedBy, type OneTubeEvent, outUnderEarlier, restsOn } from "#shared/tube/applied.ts";
import { applyToTube } from "#shared/tube/apply.ts";
import {
  type CallEvent,
  calledAbout,
  type FlagEvent,
  notedOfCalls,
  notedOfFlags,
} from "#shared/tube/apply-call.ts";
import { notedOfPatient, nothingNoted, type PatientNotes } from "#shared/tube/apply-patient.ts";
import { answeredVisits, notedOfVisit, type VisitEvent } from "#shared/tube/apply-visit.ts";
import type { ContradictionCode } from "#shared/tube/contradiction-codes.ts";
import type { EventOf, TubeEvent } from "#shared/tube/event.ts";
import { mayFollowEnd } from "#shared/tube/event-kinds.ts";
import { type Standing, standingEvents } from "#shared/tube/history.ts";
import { openRecord } from "#shared/tube/open-record.ts";
import type { Opening } from "#shared/tube/payloads.ts";
import { stillUnanswered } from "#shared/tube/reported-out.ts";
import { spellsOver, withFound } from "#shared/tube/shut-spells.ts";
import type { Contradiction, PatientTubes, StoryLine, TubeState } from "#shared/tube/state.ts";
import type { Visit } from "#shared/visit/visit.ts";

/** A record that opens without pins has no table to compute from; the example's first version stands in, and it is said. */
const FIRST_PINS = { protocol: 1, calendar: 1 } as const;

type Folding = {
  tubes: Map<string, TubeState>;
  notes: PatientNotes;
  visits: readonly Visit[];
  calls: CallLog;
  redFlags: readonly OpenFlag[];
  flagsDone: readonly DoneFlag[];
  died: PatientTubes["died"];
};

type Found = { readonly code: ContradictionCode; readonly tubeId: string | null };

const NOTHING: readonly Found[] = [];

/**
 * A patient's stream as state. Total over any list of events: what cannot be true becomes a contradiction, never an
 * exception, and the record stays open.
 */
export function fold(events: readonly TubeEvent[]): PatientTubes {
  const folding: Folding = {
    tubes: new Map(),
    notes: nothingNoted,
    visits: [],
    calls: nothingTried,
    redFlags: [],
    flagsDone: [],
    died: null,
  };
  const contradictions = standingEvents(events).flatMap((at) =>
    step(folding, at).map(
      (found): Contradiction => ({ ...found, eventId: at.event.id, recordedOn: at.event.recordedOn }),
    ),
  );
  return {
    ...folding.notes,
    reportedOut: stillUnanswered(folding.notes.reportedOut, folding.tubes),
    visits: folding.visits,
    calls: folding.calls,
    redFlags: folding.redFlags,
    flagsDone: folding.flagsDone,
    died: folding.died,
    tubes: [...folding.tubes.values()].toSorted((a, b) => a.number - b.number || (a.id < b.id ? -1 : 1)),
    contradictions,
    lastSeq: events.reduce((last, event) => Math.max(last, event.seq), 0),
  };
}

/** Takes one event into the folding, and what it answers of visits; returns what in it cannot be true. */
function step(folding: Folding, at: Standing): readonly Found[] {
  const found = applied(folding, at);
  folding.visits = answeredVisits(folding.visits, at, { tubes: folding.tubes, died: folding.died !== null });
  return found;
}

function applied(folding: Folding, at: Standing): readonly Found[] {
  const { event } = at;
  switch (event.kind) {
    case "amended":
    case "voided":
      return NOTHING;
    case "conditions noted":
    case "hospice decided":
    case "whereabouts noted":
    case "reconcile asked":
      folding.notes = notedOfPatient(folding.notes, event, at);
      return NOTHING;
    case "clinical state noted":
      folding.notes = notedOfPatient(folding.notes, event, at);
      return foundOfPatient(folding, event, at);
    case "reconciled":
      folding.notes = notedOfPatient(folding.notes, event, at);
      return reconcile(folding, event);
    case "reported out":
      folding.notes = notedOfPatient(folding.notes, event, at);
      return notOpened(folding, event.payload.candidates);
    case "records joined":
      folding.notes = notedOfPatient(folding.notes, event, at);
      return renumber(folding, event);
    case "visit booked":
    case "visit moved":
    case "visit noted":
    case "visit prepared":
      return toVisit(folding, event);
    case "call attempted":
      for (const [id, tube] of folding.tubes)
        if (tube.status !== "ended") folding.tubes.set(id, calledAbout(tube, event, at));
      return toCalls(folding, event, at);
    case "letter sent":
    case "not reached decided":
      return toCalls(folding, event, at);
    case "called":
      toCalls(folding, event, at);
      return toTube(folding, event, at);
    case "red flag raised":
    case "red flag handed":
    case "red flag done":
      return toFlags(folding, event, at);
    case "died":
      return die(folding, at);
    case "placed":
    case "taken over":
      return open(folding, at, { tubeId: event.tubes[0] ?? event.id, opening: event.payload });
    case "converted":
      return convert(folding, event, at);
    default:
      return toTube(folding, event, at);
  }
}

type Opens = { readonly tubeId: string; readonly opening: Opening };

function open(folding: Folding, at: Standing, { tubeId, opening }: Opens): readonly Found[] {
  if (folding.tubes.has(tubeId)) return [{ code: "tube-opened-twice", tubeId }];
  const tube = openRecord(at, { tubeId, opening, pins: at.event.pins ?? FIRST_PINS });
  folding.tubes.set(tubeId, { ...tube, story: [storyLine(at)] });
  const found: Found[] = [];
  if (at.event.pins === null) found.push({ code: "no-pins", tubeId });
  if (folding.died !== null) found.push({ code: "event-after-end", tubeId });
  return found;
}

function toTube(folding: Folding, event: OneTubeEvent, at: Standing): readonly Found[] {
  const tubeId = event.tubes[0] ?? "";
  const tube = folding.tubes.get(tubeId);
  if (tube === undefined) return [{ code: "event-before-opening", tubeId }];
  if (tube.status === "ended") {
    folding.tubes.set(tubeId, { ...tube, story: [...tube.story, storyLine(at)] });
    return mayFollowEnd(event.kind) ? NOTHING : [{ code: "event-after-end", tubeId }];
  }
  const { tube: next, contradiction } = applyToTube(tube, event, at);
  folding.tubes.set(tubeId, { ...spellsOver(next), story: [...next.story, storyLine(at)] });
  return contradiction === undefined ? NOTHING : [{ code: contradiction, tubeId }];
}

function convert(folding: Folding, event: EventOf<"converted">, at: Standing): readonly Found[] {
  const { closes, opens, opening } = event.payload;
  if (folding.tubes.has(opens)) return [{ code: "tube-opened-twice", tubeId: opens }];
  const old = folding.tubes.get(closes);
  const found = [...open(folding, at, { tubeId: opens, opening })];
  if (old === undefined) return [...found, { code: "tube-not-opened", tubeId: closes }];
  if (old.status === "ended") return [...found, { code: "event-after-end", tubeId: closes }];
  // Through the same tract: only the catheter's clock starts again.
  const next = folding.tubes.get(opens);
  if (next !== undefined)
    folding.tubes.set(opens, {
      ...next,
      tract: old.tract,
      tractBy: old.tractBy,
      anchorsOut: outUnderEarlier(old),
    });
  if (old.status === "fragment retained") return [...found, { code: "fragment-inside", tubeId: closes }];
  folding.tubes.set(closes, ended(old, at));
  return found;
}

/** Each tube that is shut keeps what was found meanwhile. */
function foundOfPatient(
  { tubes }: Folding,
  event: EventOf<"clinical state noted">,
  { when }: Standing,
): readonly Found[] {
  const at = { ...restsOn(event), when, time: event.time };
  for (const [id, tube] of tubes) tubes.set(id, withFound(tube, event.payload.findings, at));
  return NOTHING;
}

/** Tubes that an entry of the patient names and that had no record then. */
const notOpened = ({ tubes }: Folding, named: readonly { readonly tube: string }[]): readonly Found[] =>
  named.flatMap(({ tube: tubeId }) =>
    tubes.has(tubeId) ? [] : [{ code: "event-before-opening" as const, tubeId }],
  );

function toVisit(folding: Folding, event: VisitEvent): readonly Found[] {
  const { visits, contradiction } = notedOfVisit(folding.visits, event);
  folding.visits = visits;
  const unknown = event.kind === "visit booked" ? notOpened(folding, event.payload.tubes) : NOTHING;
  return contradiction === undefined ? unknown : [...unknown, { code: contradiction, tubeId: null }];
}

function toCalls(
  folding: Folding,
  event: CallEvent | EventOf<"called">,
  { when }: Standing,
): readonly Found[] {
  const { visits, notes } = folding;
  folding.calls = notedOfCalls(folding.calls, event, { visits, whereabouts: notes.whereabouts, when });
  return NOTHING;
}

function toFlags(folding: Folding, event: FlagEvent, at: Standing): readonly Found[] {
  const { redFlags, flagsDone, contradiction } = notedOfFlags(folding, event, at);
  folding.redFlags = redFlags;
  folding.flagsDone = flagsDone;
  const { of } = event.kind === "red flag raised" ? event.payload : { of: null };
  const unknown = of === null ? NOTHING : notOpened(folding, [of]);
  return contradiction === undefined ? unknown : [...unknown, { code: contradiction, tubeId: null }];
}

/** A number is one tube's within the patient: those of the joined record that were taken are given anew. */
function renumber(folding: Folding, { payload }: EventOf<"records joined">): readonly Found[] {
  for (const { tube: tubeId, number } of payload.numbers) {
    const tube = folding.tubes.get(tubeId);
    if (tube !== undefined) folding.tubes.set(tubeId, { ...tube, number });
  }
  return NOTHING;
}

/** Each tube named gets the side that was found; one without a record yet is said. */
function reconcile(folding: Folding, { payload }: EventOf<"reconciled">): readonly Found[] {
  for (const { tube: tubeId, side } of payload.sides) {
    const tube = folding.tubes.get(tubeId);
    if (tube !== undefined) folding.tubes.set(tubeId, { ...tube, side });
  }
  return notOpened(folding, payload.sides);
}

function die(folding: Folding, at: Standing): readonly Found[] {
  if (folding.died !== null) return [{ code: "event-after-end", tubeId: null }];
  folding.died = { eventId: at.event.id, when: at.when };
  for (const [id, tube] of folding.tubes) if (tube.status !== "ended") folding.tubes.set(id, ended(tube, at));
  return NOTHING;
}

const ended = (tube: TubeState, at: Standing): TubeState => ({
  ...tube,
  status: "ended",
  ending: endedBy(at),
  story: [...tube.story, storyLine(at)],
});

function storyLine({ event, when, amendedBy }: Standing): StoryLine {
  const { id: eventId, kind, time, recordedOn } = event;
  return { eventId, kind, when, time, recordedOn, amended: amendedBy.length > 0 };
}
