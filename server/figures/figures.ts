import { clinicOf } from "#db/queries/clinic.ts";
import { patientsNamed } from "#db/queries/patient-names.ts";
import { everyPatientState } from "#db/queries/patient-states.ts";
import { stepCount } from "#db/queries/work-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { fromShort } from "#server/record/in-short.ts";
import {
  type Counted,
  daysBehind,
  type FigureName,
  type FigureSpan,
  figuresOf,
  type Span,
} from "#shared/call/figures.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import { everything } from "#shared/record/list-filter.ts";
import type { PatientTubes } from "#shared/tube/state.ts";

/** What the figures count of a patient, and nothing that would keep the rest in memory. */
function counted({ tubes, calls, redFlags, flagsDone }: PatientTubes): Counted {
  return {
    tubes: tubes.map(({ kind, status, ending }) => ({ kind, status, ending })),
    calls,
    redFlags,
    flagsDone,
  };
}

const spanOf = (on: Day, days: FigureSpan): Span => ({ from: addDays(on, -(days - 1)), to: on });

function* everybody(db: Database): Generator<{ readonly patientId: string; readonly counted: Counted }> {
  for (const { patientId, state } of everyPatientState(db))
    yield { patientId, counted: counted(fromShort(state).state) };
}

export type AskingFigures = { readonly days: FigureSpan };

/** The lead's figures over the last days, beside what stands now. */
export function figures(db: Database, { days }: AskingFigures) {
  const on = today(db);
  const patients = [...everybody(db)].map((one) => one.counted);
  const count = (list: "undated" | "past-latest"): number =>
    stepCount(db, { list, filter: everything, today: on });
  const span = spanOf(on, days);
  return {
    ...figuresOf(patients, span, clinicOf(db).zone),
    days,
    span,
    undated: count("undated"),
    pastLatest: count("past-latest"),
  };
}

export type FiguresView = ReturnType<typeof figures>;

/** Whoever is behind one figure, with the days on which they counted, the newest first. */
export function behindFigure(
  db: Database,
  { days, figure }: AskingFigures & { readonly figure: FigureName },
) {
  const span = spanOf(today(db), days);
  const found = [...everybody(db)].flatMap(({ patientId, counted: patient }) =>
    daysBehind(patient, figure, span).map((on) => ({ patientId, on })),
  );
  const named = new Map(
    patientsNamed(
      db,
      found.map(({ patientId }) => patientId),
    ).map((one) => [one.id, one]),
  );
  return found
    .toSorted((a, b) => (a.on === b.on ? (a.patientId < b.patientId ? -1 : 1) : a.on > b.on ? -1 : 1))
    .flatMap(({ patientId, on }) => {
      const patient = named.get(patientId);
      return patient === undefined ? [] : [{ patient, on }];
    });
}
