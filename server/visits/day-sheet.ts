import { identifiersOf } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { type ShownVisit, viewDays } from "#server/visits/view-days.ts";
import type { Day } from "#shared/day/day.ts";
import { fold } from "#shared/tube/fold.ts";
import { openOf, prerequisitesOf } from "#shared/visit/prerequisites.ts";

/** One visit with all that whoever does it writes beside: every number of the patient, each tube as it stands, what is known, what is open. */
function sheetLine(db: Database, line: ShownVisit) {
  const { patient: whose, visit } = line;
  const { patient, events } = loadRecord(db, whose.id);
  const state = fold(events);
  const { protocol, calendar } = viewProtocol(db);
  const tubes = visit.tubes.map(({ tubeId, act }) => ({
    tubeId,
    act,
    tube: state.tubes.find(({ id }) => id === tubeId) ?? null,
  }));
  const kinds = tubes.flatMap(({ tube, act }) => (tube === null ? [] : [{ kind: tube.kind, act }]));
  const asked =
    visit.place.kind === "here" ? prerequisitesOf({ tubes: kinds, on: visit.on }, calendar, protocol) : [];
  return {
    visit,
    against: line.against,
    patient: { ...whose, identifiers: identifiersOf(db, whose.id) },
    tubes,
    all: state.tubes,
    known: {
      conditions: state.conditions,
      clinical: state.clinical,
      contact: { language: patient.language, needsInterpreter: patient.needsInterpreter },
    },
    /** Null where no row says what is settled before this visit. */
    open: asked.length === 0 ? null : openOf(asked, visit.prepared).map(({ thing }) => thing),
  };
}

/** A day by room to print and to write on: who comes when, what is done with what, what is still open; not who has cancelled. */
export function daySheet(db: Database, { on }: { readonly on: Day }) {
  const { today, days } = viewDays(db, { from: on, days: 1 });
  const { protocol } = viewProtocol(db);
  const [day] = days;
  return {
    today,
    on,
    shut: day?.shut ?? null,
    half: day?.half ?? null,
    rooms: (day?.rooms ?? []).map(({ room, spans, free, visits }) => ({
      room,
      spans,
      free,
      visits: visits.map((line) => sheetLine(db, line)),
    })),
    others: (day?.others ?? []).map((line) => sheetLine(db, line)),
    approved: protocol.approved,
    bleeding: protocol.bleeding,
  };
}

export type DaySheet = ReturnType<typeof daySheet>;
