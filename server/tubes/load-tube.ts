import { tubeById } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { loadRecord, type PatientRecord } from "#server/record/load-record.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { fold } from "#shared/tube/fold.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";

export type LoadedTube = {
  readonly record: PatientRecord;
  readonly state: PatientTubes;
  readonly tube: TubeState;
};

/** A tube as the events of its patient make it, with the whole record round it. Throws `tube-unknown`. */
export function loadTube(db: Database, tubeId: string): LoadedTube {
  const patientId = tubeById(db, tubeId)?.patientId;
  const record = patientId === undefined ? undefined : loadRecord(db, patientId);
  const state = record && fold(record.events);
  const tube = state?.tubes.find(({ id }) => id === tubeId);
  if (record === undefined || state === undefined || tube === undefined)
    throw new DomainError({ code: "tube-unknown" });
  return { record, state, tube };
}
