import { projectionOf } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { clinicSlots } from "#server/visits/clinic-slots.ts";
import { outWords } from "#server/visits/out-words.ts";
import { visitOf } from "#server/visits/visit-act.ts";
import { stepOf, type VisitAsked, visitAsked } from "#server/visits/visit-asked.ts";
import { visitNames } from "#server/visits/visit-names.ts";
import { addDays, type Day, daysBetween } from "#shared/day/day.ts";
import { catheterAge } from "#shared/tube/clocks.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { Clinic } from "#shared/visit/may-book.ts";
import type { SlotQuestion } from "#shared/visit/offers.ts";
import { type Offer, offers } from "#shared/visit/sooner.ts";
import { likelyAct, tubesTogether } from "#shared/visit/tubes-together.ts";
import { type ActOnTube, type NotOn, openTubes } from "#shared/visit/visit.ts";
import { windowOf } from "#shared/visit/window-of.ts";
import { catheterWords } from "#shared/words/clocks.ts";
import { placeWords, slotWords, soonerWords } from "#shared/words/offers.ts";

export type AskingSlots = {
  readonly patientId: string;
  /** Left out: those that come together, or, where a visit is moved, its own. */
  readonly tubes?: readonly ActOnTube[] | undefined;
  /** The tube that it is about, where nobody has said yet which come along. */
  readonly first?: string | undefined;
  readonly moves?: string | undefined;
  /** Left out: what the patient said the last time. */
  readonly notOn?: NotOn | undefined;
  /** Minutes that were typed, where no row says how many or another number is meant. */
  readonly minutes?: number | undefined;
  /** Left out: where a tube is out, or partly out. */
  readonly urgent?: boolean | undefined;
};

/** Days that are looked at past the latest date, so that something is offered where the window is full. */
const DAYS_AFTER = 42;
/** At least, and at most. */
const DAYS_AHEAD = { least: 60, most: 200 };

function daysLookedAt(on: Day, latest: Day | null): number {
  const asked = latest === null ? 0 : daysBetween(on, latest) + DAYS_AFTER;
  return Math.min(DAYS_AHEAD.most, Math.max(DAYS_AHEAD.least, asked));
}

type ToAsk = {
  readonly clinic: Clinic;
  readonly asked: VisitAsked;
  readonly minutes: number;
  readonly notOn: NotOn;
  readonly urgent: boolean;
};

export const slotQuestion = ({ clinic, asked, minutes, notOn, urgent }: ToAsk): SlotQuestion => ({
  clinic,
  asked: asked.asked(minutes, notOn),
  window: asked.window,
  urgent,
  days: daysLookedAt(clinic.now.on, asked.window.latest),
});

/**
 * The three best slots now for tubes of a patient, each with what it stands on and why not sooner, beside what they were computed from. No
 * slot where no row says how long it takes and nobody typed it. Throws what `visitAsked` throws. Writes nothing.
 */
export function offerSlots(db: Database, asking: AskingSlots) {
  const { patientId } = asking;
  const at = now(db);
  const moves = asking.moves === undefined ? null : visitOf(db, { patientId, visitId: asking.moves });
  const projection = projectionOf(db, patientId);
  const steps = projection.steps.map(stepOf);
  const inCare = projection.tubes.filter(({ status }) => status !== "ended");
  const states = inCare.map(({ state }) => state as TubeState);
  const booked = new Set(projection.nextVisits.map(({ tubeId }) => tubeId));
  const unbooked = states.filter(({ id }) => id === asking.first || !booked.has(id));
  const tubes =
    asking.tubes ??
    (moves === null ? tubesTogether(steps, unbooked, asking.first ?? null) : openTubes(moves));
  // The slot that a visit has is not offered to it again.
  const clinic = clinicSlots(db, at);
  const asked = visitAsked(db, at, { patientId, tubes, moves });
  const minutes =
    asking.minutes ?? (moves?.place.kind === "here" ? moves.place.minutes : asked.needs.minutes);
  const urgent = asking.urgent ?? asked.urgent;
  const notOn = asking.notOn ?? asked.notOn;
  const names = visitNames(db, clinic);
  const isUndated = (tubeId: string, act: ActOnTube["act"]): boolean =>
    Object.values(windowOf(steps, tubeId, act)).every((on) => on === null);
  const undated = asked.own.filter(({ row, act }) => isUndated(row.id, act)).map(({ row }) => row.name);
  const told = (offer: Offer) => ({
    ...offer,
    says: slotWords(offer.slot, names),
    stands: placeWords(offer, undated),
    notSooner: soonerWords(offer.sooner, names),
  });
  const question = minutes === null ? null : slotQuestion({ clinic, asked, minutes, notOn, urgent });
  return {
    today: clinic.now.on,
    moves,
    tubes: asked.own.map(({ row, tube, act }) => ({
      tubeId: row.id,
      name: row.name,
      act,
      /** No step gives it a window: within which days it is to be cannot be told. */
      undated: isUndated(row.id, act),
      inPlace: catheterWords(catheterAge(tube, clinic.now.on), tube.catheter),
      out: tube.dislodged === null ? null : outWords(db, tube, at),
      latest: steps.find(({ tubeId, kind }) => tubeId === row.id && kind === "exchange")?.latest ?? null,
    })),
    /** Every tube of the patient that can be seen, with what it is most likely seen for. */
    inCare: inCare.map((row, n) => ({
      tubeId: row.id,
      name: row.name,
      act: states[n] === undefined ? null : likelyAct(steps, states[n]),
    })),
    needs: asked.needs,
    window: asked.window,
    minutes,
    urgent,
    notOn,
    readyFrom: asked.readyFrom,
    rooms: clinic.rooms.map(({ id, name }) => ({ id, name })),
    /** Visits of these tubes before: how often it was moved, missed, cancelled. */
    before: asked.visits.filter((visit) =>
      visit.tubes.some(({ tubeId }) => tubes.some((tube) => tube.tubeId === tubeId)),
    ),
    until: question === null ? null : addDays(clinic.now.on, question.days - 1),
    offers: question === null ? [] : offers(question).map(told),
  };
}

export type OfferedSlots = ReturnType<typeof offerSlots>;
