import { clinicOf } from "#db/queries/clinic.ts";
import { identifiersOf } from "#db/queries/patients.ts";
import { stepLinesOfPatient } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { lineOf } from "#server/lists/list-line.ts";
import { joinedOf } from "#server/patients/joined-of.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { storyOf } from "#server/record/story.ts";
import { compareSteps } from "#shared/step/step.ts";
import { fold } from "#shared/tube/fold.ts";

/** Everything that a patient's page shows: who it is, the tubes with their steps, what is known, the story. */
export function viewPatient(db: Database, patientId: string) {
  const record = loadRecord(db, patientId);
  const { patient, events } = record;
  const { search: _search, ...identity } = patient;
  const day = today(db);
  return {
    today: day,
    zone: clinicOf(db).zone,
    patient: { ...identity, identifiers: identifiersOf(db, patientId) },
    state: fold(events),
    steps: stepLinesOfPatient(db, patientId)
      .map((row) => lineOf(row, day))
      .toSorted((a, b) => compareSteps(a.step, b.step)),
    story: storyOf(db, record),
    joined: joinedOf(db, record),
  };
}

export type PatientView = ReturnType<typeof viewPatient>;
