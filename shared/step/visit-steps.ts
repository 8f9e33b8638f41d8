import { addDays, type Day } from "#shared/day/day.ts";
import { dueOn, NO_PINS, why } from "#shared/step/draft.ts";
import type { Books } from "#shared/step/open-steps.ts";
import { defaultOwner, type OpenStep, type Why } from "#shared/step/step.ts";
import type { Pins } from "#shared/tube/event.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { openOf, prerequisitesOf } from "#shared/visit/prerequisites.ts";
import { isOpenVisit, openTubes, type Visit } from "#shared/visit/visit.ts";

type Patient = Pick<PatientTubes, "tubes" | "visits">;

/** What was done in a visit, as a list of acts: "exchange, removal". */
export const actsOf = ({ tubes }: Pick<Visit, "tubes">): string =>
  [...new Set(tubes.map(({ act }) => act))].join(", ");

type Asked = { readonly kind: StepKind; readonly on: Day; readonly lines: readonly Why[] };

type Pinned = { readonly visit: Visit; readonly only: TubeState | undefined; readonly pins: Pins };

/** A visit with the versions that its steps go by: those of its tube where it is for one, else those that the patient's own steps go by. */
export function pinned(visit: Visit, { tubes }: Patient): Pinned {
  const [{ tubeId } = { tubeId: null }, ...more] = visit.tubes;
  const only = more.length === 0 ? tubes.find(({ id }) => id === tubeId) : undefined;
  const open = tubes.find(({ status }) => status !== "ended");
  return { visit, only, pins: only?.pins ?? open?.pins ?? NO_PINS };
}

/** A step of a visit. It is of its tube where the visit is for one, else of the patient; the dates of the tubes stand beside it. */
function ofVisit({ visit, only, pins }: Pinned, books: Books, { kind, on, lines }: Asked): OpenStep {
  const { daysPastTarget } = books.protocol(pins.protocol).escalation;
  return {
    id: `${visit.id}:${kind}`,
    tubeId: only?.id ?? null,
    kind,
    ...dueOn(on),
    dueOn: on,
    provisional: false,
    owner: { role: defaultOwner[kind], staffId: null },
    ownerFrom: on,
    escalatesOn: addDays(on, daysPastTarget),
    physicianOn: null,
    why: lines,
    pins,
  };
}

const told = ({ on, place, state, urgent, eventId, ...visit }: Visit): Why =>
  why(
    "visit",
    {
      what: actsOf(visit),
      day: on,
      from: place.from,
      where: place.kind === "elsewhere" ? place.where : null,
      state,
      urgent: urgent ? "urgent" : null,
    },
    eventId,
  );

function toPrepare(of: Pinned, patient: Patient, books: Books): OpenStep[] {
  const { visit, pins } = of;
  if (visit.place.kind === "elsewhere") return [];
  const protocol = books.protocol(pins.protocol);
  const calendar = books.calendar(pins.calendar);
  const kinds = visit.tubes.flatMap(({ tubeId, act }) => {
    const tube = patient.tubes.find(({ id }) => id === tubeId);
    return tube === undefined ? [] : [{ kind: tube.kind, act }];
  });
  const asked = prerequisitesOf({ tubes: kinds, on: visit.on }, calendar, protocol);
  const open = openOf(asked, visit.prepared);
  const days = open.map(({ settleBy }) => settleBy ?? visit.on).toSorted();
  const lines = open.map(({ thing, rows, settleBy }) =>
    why("to-settle", { thing, says: rows.map(({ says }) => says).join("; "), day: settleBy }),
  );
  return days[0] === undefined
    ? []
    : [ofVisit(of, books, { kind: "prepare visit", on: days[0], lines: [told(visit), ...lines] })];
}

/** Tubes of a visit that nobody came to: still in care, nothing done since, and in no other visit that was booked later. */
function waiting(visit: Visit, { tubes, visits }: Patient): readonly string[] {
  const later = visits.slice(visits.indexOf(visit) + 1).filter(({ state }) => state !== "cancelled");
  return openTubes(visit)
    .map(({ tubeId }) => tubeId)
    .filter((id) => tubes.some((tube) => tube.id === id && tube.status !== "ended"))
    .filter((id) => !later.some((other) => other.tubes.some(({ tubeId }) => tubeId === id)));
}

/** How often somebody has not come with one of these tubes. */
const timesMissed = (ids: readonly string[], visits: readonly Visit[]): number =>
  visits.filter(
    ({ state, tubes }) => state === "did not attend" && tubes.some(({ tubeId }) => ids.includes(tubeId)),
  ).length;

function toRebook(of: Pinned, patient: Patient, books: Books): OpenStep[] {
  const { visit } = of;
  const ids = waiting(visit, patient);
  if (ids.length === 0) return [];
  const { on, reason, eventId, recordedOn } = visit;
  const args = { day: on, reason, times: timesMissed(ids, patient.visits) };
  return [ofVisit(of, books, { kind: "rebook", on: recordedOn, lines: [why("missed", args, eventId)] })];
}

/**
 * What visits ask for: to record what came of one that is booked, to settle what is open before it, to book again where nobody came. An
 * exchange date waits for none of them: it stands beside these with its own ladder.
 */
export const visitSteps = (patient: Patient, books: Books): OpenStep[] =>
  patient.visits.flatMap((visit) => {
    const of = pinned(visit, patient);
    if (visit.state === "did not attend") return toRebook(of, patient, books);
    if (!isOpenVisit(visit)) return [];
    const held = ofVisit(of, books, { kind: "visit", on: visit.on, lines: [told(visit)] });
    return [held, ...toPrepare(of, patient, books)];
  });
