import type { StepLine } from "#db/queries/step-rows.ts";
import type { Day } from "#shared/day/day.ts";
import { type OpenStep, ownerOn, type Why } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import type { StripMark } from "#shared/tube/strip.ts";

/** The step as it was computed. What a projection holds as text or JSON was written from these very types. */
const stepOf = (row: StepLine): OpenStep => ({
  id: row.id,
  tubeId: row.tubeId,
  kind: row.kind as StepKind,
  earliest: row.earliestOn,
  target: row.targetOn,
  latest: row.latestOn,
  dueOn: row.dueOn,
  provisional: row.provisional,
  owner: { role: row.ownerRole, staffId: row.ownerStaffId },
  ownerFrom: row.ownerFrom,
  escalatesOn: row.escalatesOn,
  physicianOn: row.physicianOn,
  why: row.why as readonly Why[],
  pins: { protocol: row.pinsProtocol ?? 1, calendar: row.pinsCalendar ?? 1 },
});

const tubeOf = (row: StepLine) =>
  row.tubeId === null || row.tubeName === null
    ? null
    : {
        id: row.tubeId,
        name: row.tubeName,
        clockEarliest: row.clockEarliest,
        clockLatest: row.clockLatest,
        plannedOn: row.plannedOn,
        marks: row.strip as readonly StripMark[],
      };

/** The visit that the step is of; of every other step, the next of its tube. */
const visitOf = ({ visitId: id, visitState: state, visitOn: on, ...row }: StepLine) =>
  id === null || state === null || on === null
    ? null
    : { id, state, on, from: row.visitFrom, where: row.visitWhere, tubes: row.visitTubes };

/** What its dates come from: a row that the clinic approved, an example that nobody has, or no row at all. */
function rowOf(why: readonly Why[]): "approved" | "example" | "none" {
  if (!why.some(({ code }) => code === "row")) return "none";
  return why.some(({ code }) => code === "row-example") ? "example" : "approved";
}

/** One open step as lists show it: what, whose, of which tube, who has it today. */
export function lineOf(row: StepLine, today: Day) {
  const step = stepOf(row);
  const { role, staffId, rung } = ownerOn(step, today);
  return {
    step,
    owner: { role, rung, name: staffId === null ? null : row.ownerName },
    patient: {
      id: row.patientId,
      familyName: row.familyName,
      givenName: row.givenName,
      number: row.number,
      birthOn: row.birthOn,
    },
    tube: tubeOf(row),
    visit: visitOf(row),
    row: rowOf(step.why),
  };
}

export type ListLine = ReturnType<typeof lineOf>;
