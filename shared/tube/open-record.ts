import { day } from "#shared/day/day.ts";
import { whenUnknown } from "#shared/day/when.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";
import type { Pins } from "#shared/tube/event.ts";
import type { TubeFacts } from "#shared/tube/facts.ts";
import type { Standing } from "#shared/tube/history.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { Opening } from "#shared/tube/payloads.ts";
import type { Clock, TubeState } from "#shared/tube/state.ts";

type FactFields = Pick<
  TubeState,
  | "size"
  | "inside"
  | "fullLength"
  | "externalLength"
  | "retention"
  | "balloonMl"
  | "fixation"
  | "flushOrder"
  | "expectedFluid"
>;

const nothingKnown: FactFields = {
  size: unknownFact,
  inside: { takes: unknownFact, bores: [], endHole: unknownFact },
  fullLength: unknownFact,
  externalLength: unknownFact,
  retention: unknownFact,
  balloonMl: unknownFact,
  fixation: unknownFact,
  flushOrder: unknownFact,
  expectedFluid: [],
};

/** A record of which nothing has been said: what most of a record says for most of its time. */
export const nothingSaid = {
  organ: null,
  route: null,
  cavity: null,
  indication: null,
  cancerObstruction: unknownFact,
  takenOverFrom: null,
  ending: null,
  ...nothingKnown,
  concerns: [],
  tipConfirmed: null,
  plan: null,
  plannedExchange: null,
  unverified: null,
  dislodged: null,
  checked: null,
  called: null,
  told: null,
  owners: {},
  troubles: [],
  trial: null,
  shutSpells: [],
  balloon: null,
  anchorsOut: null,
  repositioned: null,
  removal: null,
  handover: null,
  lastReview: null,
  reviewed: null,
  reviewAsked: null,
  decided: [],
  toFindOut: null,
  fluidTests: {},
  answered: [],
  usual: [],
} as const satisfies Partial<TubeState>;

const noClock: Clock = { since: whenUnknown, eventId: "", recordedOn: day("1900-01-01") };

/**
 * Every field of a record, to be filled in. A record that is made of this has all of them from the start: one that grows by thirty is kept as a
 * table by the runtime, and folding and computing steps took two to four times as long.
 */
export const blankRecord: TubeState = {
  ...nothingSaid,
  id: "",
  number: 0,
  kind: "nephrostomy",
  role: "drains an organ",
  mode: "to bag",
  side: unknownFact,
  status: "in",
  catheter: noClock,
  tract: noClock,
  tractBy: null,
  startedHere: false,
  pins: { protocol: 0, calendar: 0 },
  story: [],
};

/** The facts with what was spoken of replaced; what was not spoken of stands. Size never says anything of the inside. */
export function withFacts<T extends FactFields>(stood: T, said: TubeFacts): T {
  return {
    ...stood,
    size: said.size ?? stood.size,
    inside: {
      takes: said.takes ?? stood.inside.takes,
      bores: said.bores ?? stood.inside.bores,
      endHole: said.endHole ?? stood.inside.endHole,
    },
    fullLength: said.fullLength ?? stood.fullLength,
    externalLength: said.externalLength ?? stood.externalLength,
    retention: said.retention ?? stood.retention,
    balloonMl: said.balloonMl ?? stood.balloonMl,
    fixation: said.fixation ?? stood.fixation,
    flushOrder: said.flushOrder ?? stood.flushOrder,
    expectedFluid: said.expectedFluid ?? stood.expectedFluid,
  };
}

/**
 * A new tube of the same sort through the same tract: its size and how it is held are taken over unless said, everything
 * measured on the old one is unknown again.
 */
export function renewedFacts(stood: TubeState, said: TubeFacts, elsewhere: boolean): TubeState {
  const { size, retention, expectedFluid, flushOrder } = stood;
  const ofThePatient = { ...nothingKnown, expectedFluid, flushOrder };
  const carried: FactFields = elsewhere ? ofThePatient : { ...ofThePatient, size, retention };
  return withFacts({ ...stood, ...carried }, said);
}

type Opened = { readonly tubeId: string; readonly opening: Opening; readonly pins: Pins };

/** A record as it stands the moment it opens. */
export function openRecord(at: Standing, { tubeId, opening, pins }: Opened): TubeState {
  const { event, when } = at;
  const catheter: Clock = { since: when, eventId: event.id, recordedOn: event.recordedOn };
  const expected = opening.facts.expectedFluid ?? kindOf(opening.kind).expectedFluid;
  return {
    ...blankRecord,
    id: tubeId,
    number: opening.number,
    kind: opening.kind,
    role: opening.role,
    mode: opening.mode,
    side: opening.side,
    organ: opening.organ,
    route: opening.route,
    cavity: opening.cavity,
    indication: opening.indication,
    cancerObstruction: opening.cancerObstruction,
    takenOverFrom: event.kind === "taken over" ? (event.payload.from ?? "elsewhere") : null,
    status: "in",
    ...withFacts(nothingKnown, { ...opening.facts, expectedFluid: [...expected] }),
    catheter,
    tract:
      event.kind === "taken over"
        ? { since: event.payload.tractSince, eventId: event.id, recordedOn: event.recordedOn }
        : catheter,
    tractBy: when.latest,
    plan: opening.plan === null ? null : { ...opening.plan, eventId: event.id, recordedOn: event.recordedOn },
    startedHere: event.kind !== "taken over",
    pins,
    story: [],
  };
}

export const isTrue = (fact: Fact<boolean> | undefined): boolean =>
  fact !== undefined && fact.certainty !== "unknown" && fact.value;
