import { addDays, type Day } from "#shared/day/day.ts";
import { dueOn, NO_PINS, why } from "#shared/step/draft.ts";
import { flagSteps } from "#shared/step/flag-steps.ts";
import type { Books } from "#shared/step/open-steps.ts";
import { defaultOwner, type OpenStep, type Why } from "#shared/step/step.ts";
import { visitSteps } from "#shared/step/visit-steps.ts";
import type { Pins } from "#shared/tube/event.ts";
import { numberedTitle } from "#shared/tube/name.ts";
import type { PatientTubes } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

type Asked = { readonly kind: StepKind; readonly on: Day; readonly line: Why; readonly eventId: string };

/** A step of the patient, not of one tube; its id rests on the entry that asks. */
const ofPatient = (pins: Pins, { kind, on, line, eventId }: Asked): OpenStep => ({
  id: `${eventId}:${kind}`,
  tubeId: null,
  kind,
  ...dueOn(on),
  dueOn: on,
  provisional: false,
  owner: { role: defaultOwner[kind], staffId: null },
  ownerFrom: on,
  escalatesOn: null,
  physicianOn: null,
  why: [line],
  pins,
});

/** An inpatient's whereabouts are asked again in days; the dates of the tubes do not wait. No row asks at once. */
function whereaboutsAsked({ whereabouts }: PatientTubes, books: Books, pins: Pins): Asked[] {
  if (whereabouts?.place !== "inpatient") return [];
  const row = books.protocol(pins.protocol).calls?.whereaboutsEvery ?? null;
  const since = whereabouts.when.earliest ?? whereabouts.recordedOn;
  const args = { where: whereabouts.where, day: since, days: row?.days ?? null, ward: row?.ward ?? null };
  const line = why("whereabouts", { ...args, source: row?.source ?? null }, whereabouts.eventId);
  return [{ kind: "whereabouts", on: addDays(since, row?.days ?? 0), line, eventId: whereabouts.eventId }];
}

/** Which rows count hangs on the age: until the birth date is known, it is asked for, once for all tubes. */
function birthDateAsked({ tubes }: PatientTubes, bornOn: Day | null): Asked[] {
  const first = tubes.find(({ status }) => status !== "ended")?.story[0];
  if (bornOn !== null || first === undefined) return [];
  const { eventId, recordedOn } = first;
  return [{ kind: "find out", on: recordedOn, line: why("birth-date-unknown"), eventId }];
}

/** One of several was told out: whoever told it is asked which. The dates of all that may be meant stand. */
function whichOutAsked({ tubes, reportedOut }: PatientTubes): Asked[] {
  return reportedOut.flatMap(({ candidates, toldBy, eventId, recordedOn, when }): Asked[] => {
    const meant = tubes.filter(({ id, status }) => status === "in" && candidates.some((c) => c.tube === id));
    if (meant.length === 0) return [];
    const args = { tubes: meant.map(numberedTitle).join(", or "), toldBy, day: when.earliest };
    return [{ kind: "which tube out", on: recordedOn, line: why("reported-out", args, eventId), eventId }];
  });
}

/** A number that is somebody else's: another is found, until somebody is reached. */
const numbersAsked = ({ calls }: PatientTubes): Asked[] =>
  calls.wrong.map(({ number, eventId, recordedOn: on }) => ({
    kind: "find out",
    on,
    line: why("wrong-number", { number }, eventId),
    eventId,
  }));

/** What is open of the patient beside the tubes. Nothing is once the patient has died. */
export function patientSteps(patient: PatientTubes, books: Books): OpenStep[] {
  if (patient.died !== null) return [];
  const open = patient.tubes.find(({ status }) => status !== "ended");
  const pins = open?.pins ?? NO_PINS;
  const reconciles = patient.reconciles.map(({ about, says, recordedOn, eventId }): Asked => {
    return { kind: "reconcile", on: recordedOn, line: why("reconcile", { about, says }, eventId), eventId };
  });
  const where = open === undefined ? [] : whereaboutsAsked(patient, books, pins);
  const born = birthDateAsked(patient, books.bornOn);
  const asked = [...where, ...born, ...numbersAsked(patient), ...reconciles, ...whichOutAsked(patient)];
  return [
    ...asked.map((step) => ofPatient(pins, step)),
    ...visitSteps(patient, books),
    ...flagSteps(patient),
  ];
}
