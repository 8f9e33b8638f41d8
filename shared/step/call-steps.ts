import { type CallLog, dayOfTry, type Tried } from "#shared/call/call-log.ts";
import { type NextTry, nextTry } from "#shared/call/next-try.ts";
import { clocksOf } from "#shared/call/reach.ts";
import { addWorkingDays, type ClinicCalendar, nextOpenDay, whyShut } from "#shared/day/clinic-days.ts";
import { addDays, type Day, later } from "#shared/day/day.ts";
import { type Draft, moved, type TubeQuestion, why } from "#shared/step/draft.ts";
import { defaultOwner, type OpenStep, type Why } from "#shared/step/step.ts";
import { earliestOn, trialTarget } from "#shared/step/trial-calls.ts";
import { numberedTitle } from "#shared/tube/name.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { isOpenVisit, openTubes } from "#shared/visit/visit.ts";

type Patient = Pick<PatientTubes, "calls" | "whereabouts" | "visits">;

const draft = (window: Draft["window"], lines: readonly Why[]): Draft => ({
  kind: "call",
  window,
  why: lines,
});

/** Day on which somebody was last reached about this tube; null while nobody was. */
const reachedOn = ({ called }: TubeState): Day | null =>
  called?.reached === true ? (called.when.latest ?? null) : null;

/** After a placement, an exchange or a new puncture that was done here. */
function afterStart({ tube, protocol }: TubeQuestion): Draft[] {
  const start = tube.catheter.since;
  if (!tube.startedHere || start.precision !== "day" || tube.called?.reached === true) return [];
  const { from, to, source } = protocol.firstCall;
  const first = addDays(start.earliest, from);
  const window = { earliest: first, target: first, latest: addDays(start.earliest, to) };
  const lines = [why("first-call", { from, to, source, day: start.earliest }, tube.catheter.eventId)];
  if (tube.called !== null)
    lines.push(why("call-attempts", { attempts: tube.called.attempts }, tube.called.eventId));
  return [draft(window, lines)];
}

/** A drain of a collection, until it is out: again and again. */
function ofCollection({ tube, protocol }: TubeQuestion): Draft[] {
  const row = protocol.calls?.collectionEvery ?? null;
  if (row === null || row.days.length === 0 || tube.role !== "collection") return [];
  const last = reachedOn(tube);
  const precise = tube.startedHere && tube.catheter.since.precision === "day";
  if (last === null && precise) return [];
  const since = last ?? tube.catheter.recordedOn;
  const days = row.days.toSorted((a, b) => a - b);
  const [from = 0, to = from] = [days[0], days.at(-1)];
  const first = addDays(since, from);
  const line = why("collection-call", { day: since, from, to, source: row.source });
  return [draft({ earliest: first, target: first, latest: addDays(since, to) }, [line])];
}

/** The day that the patient is asked to come: of the visit that is booked, else the one that the clock asks for. */
function comesOn({ tube }: TubeQuestion, { visits }: Patient, dated: readonly Draft[]): Day | null {
  const booked = visits
    .filter(isOpenVisit)
    .filter((visit) => openTubes(visit).some(({ tubeId }) => tubeId === tube.id))
    .map(({ on }) => on)
    .toSorted()[0];
  const asked = dated.find(({ kind }) => kind === "exchange" || kind === "remove or exchange");
  return booked ?? asked?.window.target ?? null;
}

/** Weeks and then days before: the first is answered by any call from then on, the second by one near the day. */
function beforeExchange(at: TubeQuestion, patient: Patient, dated: readonly Draft[]): Draft[] {
  const row = at.protocol.calls?.beforeExchange ?? null;
  const on = row === null ? null : comesOn(at, patient, dated);
  if (row === null || on === null) return [];
  const since = at.tube.catheter.since.latest ?? at.tube.catheter.recordedOn;
  const [first, second] = [
    later(addDays(on, -row.days), since),
    addWorkingDays(on, -row.workingDays, at.calendar) ?? addDays(on, -row.workingDays),
  ];
  const reached = reachedOn(at.tube);
  const due = reached === null || reached < first ? first : second;
  if (reached !== null && reached >= second) return [];
  const line = why("exchange-call", {
    day: on,
    days: row.days,
    workingDays: row.workingDays,
    source: row.source,
  });
  return [draft({ earliest: due, target: due, latest: later(due, on) }, [line])];
}

/** Nobody came: asked about once, until somebody is reached. */
function afterMissed({ tube }: TubeQuestion, { visits, calls }: Patient): Draft[] {
  const missed = visits.filter(
    ({ id, state, tubes }) =>
      state === "did not attend" &&
      tubes.some(({ tubeId }) => tubeId === tube.id) &&
      calls.reached?.missed.includes(id) !== true,
  );
  return missed.map(({ on, recordedOn, eventId }) =>
    draft({ earliest: recordedOn, target: recordedOn, latest: null }, [
      why("missed-call", { day: on }, eventId),
    ]),
  );
}

/** Home again from a hospital. */
function afterDischarge({ protocol }: TubeQuestion, { whereabouts, calls }: Patient): Draft[] {
  if (whereabouts?.discharged !== true || calls.reached?.whereabouts === whereabouts.eventId) return [];
  const { from, to, source } = protocol.firstCall;
  const day = whereabouts.when.earliest ?? whereabouts.recordedOn;
  const first = addDays(day, from);
  const line = why("discharge-call", { from, to, source, day }, whereabouts.eventId);
  return [draft({ earliest: first, target: first, latest: addDays(day, to) }, [line])];
}

/** A call of a running trial that reached nobody is tried again like every other, on closed days too. */
export function trialAgain(at: TubeQuestion, { calls }: Patient): Draft[] {
  const target = trialTarget(at);
  if (target === null || !calls.tries.some((tried) => dayOfTry(tried) >= target)) return [];
  return [draft({ earliest: target, target, latest: null }, [why("trial-call", { day: target })])];
}

/** Why somebody is called about a tube that is in, before the calendar has had its say. */
export function callDrafts(at: TubeQuestion, patient: Patient, dated: readonly Draft[]): Draft[] {
  const drafts = [
    ...afterStart(at),
    ...ofCollection(at),
    ...beforeExchange(at, patient, dated),
    ...afterMissed(at, patient),
    ...afterDischarge(at, patient),
  ];
  const { whereabouts } = patient;
  if (whereabouts?.place !== "inpatient") return drafts;
  const line = why("inpatient", { where: whereabouts.where }, whereabouts.eventId);
  return drafts.map((one) => ({ ...one, why: [...one.why, line] }));
}

/** After a removal that was seen here, once; not of somebody who died, nor where a clinician stopped the calls. */
export function afterRemoval(
  { tube, protocol }: TubeQuestion,
  { calls, died, hospice }: Pick<PatientTubes, "calls" | "died" | "hospice">,
): Draft[] {
  if (died !== null || hospice?.decision?.calls === "stop") return [];
  const row = protocol.calls?.afterRemoval ?? null;
  const { ending } = tube;
  if (row === null || ending?.kind !== "removed" || ending.when.precision !== "day") return [];
  const out = ending.when.earliest;
  const [first, latest] = [addDays(out, row.from), addDays(out, row.to)];
  const reached = calls.reached?.when.latest ?? null;
  if (ending.recordedOn > latest || (reached !== null && reached >= first)) return [];
  const line = why(
    "removal-call",
    { from: row.from, to: row.to, day: out, source: row.source },
    ending.eventId,
  );
  return [draft({ earliest: first, target: first, latest }, [line])];
}

/** Of several tubes, whose line it is. */
const ofTube = (step: OpenStep, tubes: readonly TubeState[]): readonly Why[] => {
  const tube = tubes.find(({ id }) => id === step.tubeId);
  return tube === undefined ? step.why : [why("of-tube", { tube: numberedTitle(tube) }), ...step.why];
};

/** One call for all of a patient's tubes: the days of what is due first, and why for each of them. */
function oneCall(steps: readonly OpenStep[], { tubes }: PatientTubes): OpenStep | null {
  const [first, ...others] = steps.toSorted((a, b) =>
    a.dueOn === b.dueOn ? (a.id < b.id ? -1 : 1) : a.dueOn < b.dueOn ? -1 : 1,
  );
  if (first === undefined) return null;
  if (others.length === 0) return first;
  return { ...first, tubeId: null, why: steps.flatMap((step) => ofTube(step, tubes)) };
}

const kindOfNext: Readonly<Record<NextTry["next"], StepKind>> = {
  call: "call",
  "call back": "call back",
  "alternate contact": "alternate contact",
  letter: "letter",
  "referrer and family doctor": "ask the referrer",
  physician: "not reached",
};

/** What was tried since the call came up; a call before that was about something else. */
const since = (cameUp: Day, { tries }: CallLog): readonly Tried[] =>
  tries.filter((tried) => dayOfTry(tried) >= cameUp);

function afterTries(step: OpenStep, next: NextTry): OpenStep {
  const kind = kindOfNext[next.next];
  const { on, at, part, tried, of, source } = next;
  const latest = next.latest ?? (kind === "call" ? step.latest : null);
  return {
    ...step,
    id: step.id.replace(/:call$/, `:${kind}`),
    kind,
    earliest: on,
    target: on,
    latest: latest === null ? null : later(latest, on),
    dueOn: on,
    owner: kind === "not reached" ? { role: defaultOwner[kind], staffId: null } : step.owner,
    ownerFrom: on,
    escalatesOn: null,
    physicianOn: null,
    why: [
      ...step.why.filter(({ code }) => code !== "call-attempts"),
      why("next-try", { tried, of, next: next.next, day: on, at, part, source }),
    ],
  };
}

/** The day that was asked for, or the next on which the clinic is open, and that it was moved. A trial, without a calendar, waits for none. */
function ontoOpenDay(asked: Day, calendar: ClinicCalendar | null): { on: Day; lines: readonly Why[] } {
  const because = calendar === null ? null : whyShut(asked, calendar);
  const to = calendar === null ? null : nextOpenDay(asked, calendar);
  if (because === null || to === null) return { on: asked, lines: [] };
  return { on: to, lines: [moved({ end: "target", from: asked, to, because })] };
}

/** A physician has decided from when on somebody is called again, or, of records that have all ended, that nobody is. */
function afterDecision(step: OpenStep, { again }: CallLog, calendar: ClinicCalendar | null): OpenStep | null {
  if (again === null) return step;
  const { on: asked, decidedBy, eventId, recordedOn } = again;
  if (asked === null) return (step.earliest ?? step.dueOn) > recordedOn ? step : null;
  if (asked <= step.dueOn) return step;
  const { on, lines } = ontoOpenDay(asked, calendar);
  const line = why("call-again", { day: asked, decidedBy }, eventId);
  const latest = step.latest === null ? null : later(step.latest, on);
  const whys = [...step.why, line, ...lines];
  return { ...step, earliest: on, target: on, latest, dueOn: on, ownerFrom: on, why: whys };
}

/**
 * The one call of a patient, by what was tried: steps that each tube asks for, as the call that is due, or as what follows when nobody was
 * reached. No outcome leaves it without a day.
 */
export function callStep(
  steps: readonly OpenStep[],
  patient: PatientTubes,
  questions: readonly TubeQuestion[],
): readonly OpenStep[] {
  const one = oneCall(steps, patient);
  const at = questions.find(({ tube }) => one?.id === `${tube.id}:call`);
  if (one === null || at === undefined) return one === null ? [] : [one];
  const inTrial = questions.some(({ tube }) => tube.status === "in" && tube.trial?.state === "running");
  const asked = afterDecision(one, patient.calls, inTrial ? null : at.calendar);
  if (asked === null) return [];
  // A decision's own day, not the open one after it: while a trial runs somebody is rung on a closed day too.
  const putOffTo = asked === one ? null : (patient.calls.again?.on ?? null);
  const tries = since(putOffTo ?? asked.earliest ?? asked.dueOn, patient.calls);
  const last = tries.at(-1);
  if (last === undefined) return [asked];
  const early = earliestOn(questions, dayOfTry(last));
  const next = nextTry(
    { tries },
    { rows: at.protocol.calls, calendar: at.calendar, early, clocks: clocksOf(at.zone, at.reach) },
  );
  return [next === null ? asked : afterTries(asked, next)];
}
