import { identifiersOf } from "#db/queries/patients.ts";
import { stepLinesOfPatient } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { storyOf } from "#server/record/story.ts";
import { fold } from "#shared/tube/fold.ts";

/** Everything that a patient's page shows: who it is, the tubes with their steps, what is known, the story. */
export function viewPatient(db: Database, patientId: string) {
  const { patient, events } = loadRecord(db, patientId);
  const { search: _search, ...identity } = patient;
  return {
    today: today(db),
    patient: { ...identity, identifiers: identifiersOf(db, patientId) },
    state: fold(events),
    steps: stepLinesOfPatient(db, patientId),
    story: storyOf(db, patientId, events),
  };
}

export type PatientView = ReturnType<typeof viewPatient>;
