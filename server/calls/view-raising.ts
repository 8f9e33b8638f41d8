import { clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { raisingContext } from "#server/calls/flag-context.ts";
import { identityFor } from "#server/calls/view-flag.ts";
import { now } from "#server/clock.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { refuseClosedRecord } from "#server/record/refuse-closed-record.ts";
import { fold } from "#shared/tube/fold.ts";

/** What the page shows on which a red flag is raised. Throws `patient-unknown`, and what a closed record refuses. */
export function viewRaising(db: Database, { patientId }: { readonly patientId: string }) {
  const record = loadRecord(db, patientId);
  refuseClosedRecord(db, record.patient);
  const state = fold(record.events);
  const { name, phone } = clinicOf(db);
  const { version, approved } = viewProtocol(db).protocol;
  return {
    patient: identityFor(db, record),
    context: raisingContext(db, now(db), state),
    table: { version, approved },
    conditions: state.conditions,
    clinic: { name, phone },
    lastSeen: state.lastSeq,
  };
}
