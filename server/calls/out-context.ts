import type { Database } from "#db/sqlite.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { formContext } from "#server/record/form-context.ts";
import type { PatientRecord } from "#server/record/load-record.ts";
import { thatMayBeOut } from "#shared/call/that-may-be-out.ts";
import type { Instant } from "#shared/day/instant.ts";
import type { OutContext } from "#shared/record/call/out-context.ts";
import type { PatientTubes } from "#shared/tube/state.ts";

type OfPatient = { readonly record: PatientRecord; readonly state: PatientTubes };

/** What a tube that is out is recorded beside: each of the patient's with what the rows say then. Throws what a closed record refuses. */
export function outContext(db: Database, at: Instant, { record, state }: OfPatient): OutContext {
  const { tube: _tube, ...context } = formContext(db, at, { patientId: record.patient.id, tubeId: null });
  const beside = { state, books: record.books, newest: viewProtocol(db).protocol };
  return { ...context, tubes: state.tubes.flatMap((tube) => thatMayBeOut(tube, beside)) };
}
