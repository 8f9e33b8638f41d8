import type { Database } from "#db/sqlite.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { takeHome } from "#server/tubes/take-home.ts";
import { viewVisit } from "#server/visits/view-visit.ts";
import { rowFor } from "#shared/step/dated-steps.ts";
import { ageOf } from "#shared/step/open-steps.ts";

/**
 * What a letter about a visit says, and to whom: the visit, the clinic's rows of today for what is asked before it and told at home
 * (decision 54 of the developers' guide), and per tube whether those rows speak of somebody of that age.
 */
export function visitLetter(db: Database, asked: { readonly patientId: string; readonly visitId: string }) {
  const { today, patient, visit, tubes, room, prerequisites, conditions } = viewVisit(db, asked);
  const { books } = loadRecord(db, asked.patientId);
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
    takeHome: takeHome(db),
  };
}
