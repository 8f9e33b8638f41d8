import type { Database } from "#db/sqlite.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { takeHome } from "#server/tubes/take-home.ts";
import { viewVisit } from "#server/visits/view-visit.ts";
import { rowFor } from "#shared/step/dated-steps.ts";
import { ageOf } from "#shared/step/open-steps.ts";
import { pinned } from "#shared/step/visit-steps.ts";
import { fold } from "#shared/tube/fold.ts";

/**
 * What a letter about a visit says, and to whom: the visit with what its own rows ask for, the clinic's rows of today for what is told at
 * home (decision 54 of the developers' guide), and per tube whether those speak of somebody of that age.
 */
export function visitLetter(db: Database, asked: { readonly patientId: string; readonly visitId: string }) {
  const { today, patient, visit, tubes, room, prerequisites, conditions } = viewVisit(db, asked);
  const { books, events } = loadRecord(db, asked.patientId);
  const asking = books.protocol(pinned(visit, fold(events)).pins.protocol);
  const { protocol } = viewProtocol(db);
  return {
    today,
    patient,
    visit,
    room,
    tubes: tubes.map(({ tube, act }) => ({
      tube,
      act,
      row: rowFor({ tube, conditions, age: ageOf(tube, books.bornOn), protocol }),
    })),
    /** Those that somebody said do not apply to this patient are left out. */
    things: prerequisites
      .filter(({ answer }) => answer?.state !== "does not apply")
      .map(({ thing }) => thing),
    /** What is to be brought rests on rows that nobody has approved. */
    isExample: prerequisites.length > 0 && asking.approved === null,
    takeHome: takeHome(db),
  };
}
