import { clinicOf } from "#db/queries/clinic.ts";
import { identifiersOf } from "#db/queries/patients.ts";
import { stepLinesOfPatient } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { lineOf } from "#server/lists/list-line.ts";
import { recentOutput } from "#server/output/recent-output.ts";
import { joinedOf } from "#server/patients/joined-of.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { storyOf } from "#server/record/story.ts";
import type { ChartFacts } from "#shared/output/chart/chart-facts.ts";
import { compareSteps } from "#shared/step/step.ts";
import { fold } from "#shared/tube/fold.ts";

/** Everything that a patient's page shows: who it is, the tubes with their steps, what is known, the story. */
export function viewPatient(db: Database, patientId: string) {
  const record = loadRecord(db, patientId);
  const { patient, events } = record;
  const { search: _search, ...identity } = patient;
  const day = today(db);
  const state = fold(events);
  return {
    today: day,
    zone: clinicOf(db).zone,
    patient: { ...identity, identifiers: identifiersOf(db, patientId) },
    state,
    /** The last days of output of each tube whose record has not ended and that has any, by its id. */
    charts: Object.fromEntries(
      state.tubes
        .filter(({ status }) => status !== "ended")
        .flatMap((tube) => {
          const chart = recentOutput(db, tube);
          return chart === null ? [] : [[tube.id, chart]];
        }),
    ) as Readonly<Record<string, ChartFacts>>,
    steps: stepLinesOfPatient(db, patientId)
      .map((row) => lineOf(row, day))
      .toSorted((a, b) => compareSteps(a.step, b.step)),
    story: storyOf(db, record),
    joined: joinedOf(db, record),
  };
}

export type PatientView = ReturnType<typeof viewPatient>;
