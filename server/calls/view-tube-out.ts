import { clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { outContext } from "#server/calls/out-context.ts";
import { identityFor } from "#server/calls/view-flag.ts";
import { now } from "#server/clock.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { outWords } from "#server/visits/out-words.ts";
import { fold } from "#shared/tube/fold.ts";
import { numberedTitle } from "#shared/tube/name.ts";

/** What the page shows on which a tube is recorded that is out: each tube with its rows, those that are out already, whom to ring. */
export function viewTubeOut(db: Database, { patientId }: { readonly patientId: string }) {
  const record = loadRecord(db, patientId);
  const state = fold(record.events);
  const at = now(db);
  const { protocol } = viewProtocol(db);
  const { name, phone } = clinicOf(db);
  return {
    patient: identityFor(db, record),
    context: outContext(db, at, { record, state }),
    outAlready: state.tubes
      .filter(({ status }) => status === "out, undecided")
      .map((tube) => ({ id: tube.id, title: numberedTitle(tube), out: outWords(db, tube, at) })),
    table: { version: protocol.version, approved: protocol.approved },
    /** Both classes are shown: which of them an act is, a physician says. */
    bleeding: protocol.bleeding,
    clinic: { name, phone },
    lastSeen: state.lastSeq,
  };
}
