import type { Reach } from "#shared/call/reach.ts";
import { type ClinicCalendar, type DayWindow, fitWindow } from "#shared/day/clinic-days.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import type { Zone } from "#shared/day/instant.ts";
import type { Reading } from "#shared/output/reading.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { alarmDrafts } from "#shared/step/alarm-step.ts";
import { anchorDrafts } from "#shared/step/anchor-step.ts";
import {
  askAgainDrafts,
  balloonDrafts,
  diaryDrafts,
  tipDrafts,
  trialDrafts,
} from "#shared/step/between-steps.ts";
import { afterRemoval, callDrafts, callStep, trialAgain } from "#shared/step/call-steps.ts";
import {
  findOutDrafts,
  handoverDrafts,
  removalDrafts,
  tellDrafts,
  underHospice,
} from "#shared/step/care-steps.ts";
import { datedDrafts } from "#shared/step/dated-steps.ts";
import {
  type Age18,
  type Draft,
  dueOn,
  moved,
  NO_PINS,
  single,
  type TubeQuestion,
  why,
} from "#shared/step/draft.ts";
import { patientSteps } from "#shared/step/patient-steps.ts";
import { decidedDrafts } from "#shared/step/review-steps.ts";
import {
  compareSteps,
  defaultOwner,
  isUrgent,
  type OpenStep,
  type Why,
  type WhyCode,
} from "#shared/step/step.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { Contradiction, PatientTubes, TubeState } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** The versioned tables that pins point into, and the birth date, null when nobody knows it. */
export type Books = {
  readonly protocol: (version: number) => Protocol;
  readonly calendar: (version: number) => ClinicCalendar;
  readonly bornOn: Day | null;
  readonly zone: Zone;
  /** How the patient is reached, as far as it says when. */
  readonly reach: Reach;
  /** The standing readings of a tube, in any order; asked for only where they can make a step. */
  readonly readings: (tubeId: string) => readonly Reading[];
};

type At = TubeQuestion;

/**
 * Under 18 on the day that the catheter's clock started; the day of recording stands in for an unknown one. Without a birth date the
 * table's rows still give a date, since no date at all would lose the tube, but each says that the age is unknown.
 */
export function ageOf(tube: TubeState, bornOn: Day | null): Age18 {
  if (bornOn === null) return "unknown";
  const eighteenth = `${Number(bornOn.slice(0, 4)) + 18}${bornOn.slice(4)}`;
  return (tube.catheter.since.latest ?? tube.catheter.recordedOn) < eighteenth ? "under 18" : "adult";
}

const dueDay = (window: DayWindow, cameUp: Day): Day =>
  window.target ?? window.latest ?? window.earliest ?? cameUp;

/** From when a physician is asked, and from when a physician has it. What needs somebody now is taken to one at once. */
function ladderOf(
  kind: StepKind,
  window: DayWindow,
  protocol: Protocol,
): Pick<OpenStep, "escalatesOn" | "physicianOn"> {
  const { target, latest } = window;
  if (isUrgent(kind) && target !== null) return { escalatesOn: target, physicianOn: addDays(target, 1) };
  const physicianOn = latest === null || kind === "call" ? null : addDays(latest, 1);
  const asked = target === null ? null : addDays(target, protocol.escalation.daysPastTarget);
  const before = asked !== null && (physicianOn === null || asked < physicianOn);
  return { escalatesOn: before ? asked : null, physicianOn };
}

/** Lines of a date that may turn out another. */
const unsureLines: readonly WhyCode[] = ["age-unknown", "counted-from-span", "start-unknown"];

const restsOnUnsure = (tube: TubeState, draft: Draft): boolean =>
  tube.catheter.since.precision !== "day" ||
  tube.unverified !== null ||
  draft.why.some(({ code }) => unsureLines.includes(code));

function toStep(at: At, draft: Draft): OpenStep {
  const { tube, protocol } = at;
  const { kind, window } = draft;
  return {
    id: `${tube.id}:${kind}`,
    tubeId: tube.id,
    kind,
    ...window,
    dueOn: dueDay(window, tube.catheter.recordedOn),
    provisional: restsOnUnsure(tube, draft),
    owner: tube.owners[kind] ?? { role: defaultOwner[kind], staffId: null },
    ownerFrom: window.earliest ?? window.target,
    ...ladderOf(kind, window, protocol),
    why: draft.why,
    pins: tube.pins,
  };
}

/** A draft brought onto clinic days; where no day is left, the asked dates stand and a loose end says so. */
function onClinicDays(at: At, draft: Draft): Draft[] {
  const fitted = fitWindow(draft.window, at.calendar);
  const lines = fitted.moved.map(moved);
  if (fitted.kind === "fits") return [{ ...draft, window: fitted.window, why: [...draft.why, ...lines] }];
  const noDay: Draft = {
    kind: "no day left",
    window: { earliest: null, target: fitted.asked.latest ?? fitted.asked.target, latest: null },
    why: [why("no-day-left", { step: draft.kind }), ...lines],
  };
  return [draft, noDay];
}

/** What stands in every status that has not ended. */
const always = (question: TubeQuestion): Draft[] => [
  ...alarmDrafts(question),
  ...handoverDrafts(question.tube),
];

function whileIn(at: At, patient: PatientTubes): Draft[] {
  const { dislodged, unverified } = at.tube;
  const on = dislodged?.recordedOn ?? at.tube.catheter.recordedOn;
  const part = dislodged?.part
    ? [single("part out", on, [why("partly-dislodged", {}, dislodged.eventId)])]
    : [];
  const elsewhere =
    unverified === null
      ? []
      : [
          single("confirm what was done elsewhere", unverified.recordedOn, [
            why("reported-elsewhere", {}, unverified.eventId),
          ]),
        ];
  const dates = dated(at);
  const onDays = [
    ...removalDrafts(at),
    ...decidedDrafts(at.tube),
    ...balloonDrafts(at),
    ...anchorDrafts(at),
    ...callDrafts(at, patient, dates),
  ];
  return [
    ...part,
    ...dates,
    ...elsewhere,
    ...trialDrafts(at),
    ...trialAgain(at, patient),
    ...askAgainDrafts(at),
    ...diaryDrafts(at),
    ...tellDrafts(at.tube),
    ...tipDrafts(at),
    ...findOutDrafts(at),
    ...onDays.flatMap((draft) => onClinicDays(at, draft)),
  ];
}

const dated = (at: At): Draft[] =>
  datedDrafts(at).flatMap((draft) =>
    draft.kind === "assess the date" || draft.kind === "no row" ? [draft] : onClinicDays(at, draft),
  );

function byStatus(at: At, patient: PatientTubes): Draft[] {
  const { tube } = at;
  switch (tube.status) {
    case "ended":
      return afterRemoval(at, patient).flatMap((draft) => onClinicDays(at, draft));
    case "out, undecided": {
      const on = tube.dislodged?.recordedOn ?? tube.catheter.recordedOn;
      return [single("tube out", on, [why("fell-out", {}, tube.dislodged?.eventId ?? null)])];
    }
    case "fragment retained": {
      const on = tube.ending?.recordedOn ?? tube.catheter.recordedOn;
      return [single("fragment retained", on, [why("fragment", {}, tube.ending?.eventId ?? null)])];
    }
    case "removal not confirmed": {
      const told = tube.unverified ?? tube.catheter;
      // Told is not seen: until somebody confirms it, the tube may still be in and its dates stand.
      return [
        single("confirm removal", told.recordedOn, [why("removal-told", {}, told.eventId)]),
        ...dated(at),
      ];
    }
    case "in":
      return whileIn(at, patient);
  }
}

const draftsOf = (at: At, patient: PatientTubes): Draft[] =>
  at.tube.status === "ended"
    ? byStatus(at, patient)
    : underHospice([...byStatus(at, patient), ...always(at)], patient.hospice);

function contradictionStep(found: Contradiction, index: number, patient: PatientTubes): OpenStep {
  const tube = patient.tubes.find(({ id }) => id === found.tubeId);
  return {
    id: `${found.eventId}:contradiction:${index}`,
    tubeId: tube?.id ?? null,
    kind: "contradiction",
    ...dueOn(found.recordedOn),
    dueOn: found.recordedOn,
    provisional: false,
    owner: tube?.owners.contradiction ?? { role: defaultOwner.contradiction, staffId: null },
    ownerFrom: found.recordedOn,
    escalatesOn: null,
    physicianOn: null,
    why: [why("contradiction", { code: found.code }, found.eventId)],
    pins: tube?.pins ?? NO_PINS,
  };
}

/** A tube wholly inside has none, and of a record that has ended nothing is asked. */
const mayHaveOutput = ({ kind, status }: TubeState): boolean => status !== "ended" && kindOf(kind).outside;

/**
 * Every open step of a patient, in the total order of steps. Depends on events, readings, pins and the tables they point into;
 * not on today. A record that has not ended has at least one.
 */
export function openSteps(patient: PatientTubes, books: Books): OpenStep[] {
  const readingsOf = (tube: TubeState) => (mayHaveOutput(tube) ? books.readings(tube.id) : []);
  const questions = patient.tubes.map(
    (tube): At => ({
      tube,
      conditions: patient.conditions,
      clinical: patient.clinical,
      age: ageOf(tube, books.bornOn),
      protocol: books.protocol(tube.pins.protocol),
      calendar: books.calendar(tube.pins.calendar),
      zone: books.zone,
      reach: books.reach,
      readings: readingsOf(tube),
      others: () =>
        patient.tubes
          .filter(({ id }) => id !== tube.id)
          .map((other) => ({ tube: other, readings: readingsOf(other) })),
    }),
  );
  const steps = questions.flatMap((at) => mergeSame(draftsOf(at, patient).map((draft) => toStep(at, draft))));
  const calls = steps.filter(({ kind }) => kind === "call");
  const odd = patient.contradictions.map((found, index) => contradictionStep(found, index, patient));
  return [
    ...steps.filter(({ kind }) => kind !== "call"),
    ...callStep(calls, patient, questions),
    ...odd,
    ...patientSteps(patient, books),
  ].toSorted(compareSteps);
}

/** Lines beside others, each once: two reasons can rest on the same. */
function withLines(lines: readonly Why[], more: readonly Why[]): readonly Why[] {
  const said = new Set(lines.map((line) => JSON.stringify(line)));
  return [...lines, ...more.filter((line) => !said.has(JSON.stringify(line)))];
}

/** Two reasons for the same step are one step with both whys: the dates of the one that is due first. */
function mergeSame(steps: readonly OpenStep[]): OpenStep[] {
  const merged: OpenStep[] = [];
  for (const step of steps) {
    const place = merged.findIndex(({ id }) => id === step.id);
    const stood = merged[place];
    if (stood === undefined) merged.push(step);
    else {
      const first = step.dueOn < stood.dueOn ? step : stood;
      merged[place] = { ...first, why: withLines(stood.why, step.why) };
    }
  }
  return merged;
}
