import { identifiersOf } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { type ShownVisit, viewDays } from "#server/visits/view-days.ts";
import type { Day } from "#shared/day/day.ts";
import { pinned } from "#shared/step/visit-steps.ts";
import { fold } from "#shared/tube/fold.ts";
import { openOf, prerequisitesOf } from "#shared/visit/prerequisites.ts";

/** One visit with all that whoever does it writes beside: every number of the patient, each tube as it stands, what is known, what is open. */
function sheetLine(db: Database, line: ShownVisit) {
  const { patient: whose, visit } = line;
  const { patient, events, books } = loadRecord(db, whose.id);
  const state = fold(events);
  // As the visit's own page and step ask: by the versions that its tube goes by.
  const { pins } = pinned(visit, state);
  const protocol = books.protocol(pins.protocol);
  const tubes = visit.tubes.map(({ tubeId, act }) => ({
    tubeId,
    act,
    tube: state.tubes.find(({ id }) => id === tubeId) ?? null,
  }));
  const kinds = tubes.flatMap(({ tube, act }) => (tube === null ? [] : [{ kind: tube.kind, act }]));
  const asked =
    visit.place.kind === "here"
      ? prerequisitesOf({ tubes: kinds, on: visit.on }, books.calendar(pins.calendar), protocol)
      : [];
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
    /** What is asked rests on rows that nobody has approved. */
    isExample: asked.length > 0 && protocol.approved === null,
    /** Null where no row says what is settled before this visit. */
    open: asked.length === 0 ? null : openOf(asked, visit.prepared).map(({ thing }) => thing),
  };
}

/** A day by room to print and to write on: who comes when, what is done with what, what is still open; not who has cancelled. */
export function daySheet(db: Database, { on }: { readonly on: Day }) {
  const { today, days } = viewDays(db, { from: on, days: 1 });
  const { protocol } = viewProtocol(db);
  const [day] = days;
  const rooms = (day?.rooms ?? []).map(({ room, spans, free, visits }) => ({
    room,
    spans,
    free,
    visits: visits.map((line) => sheetLine(db, line)),
  }));
  const lines = rooms.flatMap(({ visits }) => visits);
  return {
    today,
    on,
    shut: day?.shut ?? null,
    half: day?.half ?? null,
    rooms,
    others: (day?.others ?? []).map((line) => sheetLine(db, line)),
    /** A row of what is asked, or the bleeding classes below, nobody has approved. */
    isExample: protocol.approved === null || lines.some((line) => line.isExample),
    bleeding: protocol.bleeding,
  };
}

export type DaySheet = ReturnType<typeof daySheet>;
