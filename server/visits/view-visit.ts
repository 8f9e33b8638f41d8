import { clinicOf } from "#db/queries/clinic.ts";
import { identifiersOf } from "#db/queries/patients.ts";
import { projectionOf } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { clinicSlots } from "#server/visits/clinic-slots.ts";
import { standsAgainst } from "#server/visits/stands-against.ts";
import { visitOf } from "#server/visits/visit-act.ts";
import { visitNames } from "#server/visits/visit-names.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { openSteps } from "#shared/step/open-steps.ts";
import { pinned } from "#shared/step/visit-steps.ts";
import { catheterAge, tractAge } from "#shared/tube/clocks.ts";
import { fold } from "#shared/tube/fold.ts";
import { openOf, prerequisitesOf } from "#shared/visit/prerequisites.ts";
import { openTubes } from "#shared/visit/visit.ts";

/** Everything that a visit's page shows: whose, which tubes with their ages, what is to be settled first, what stands against it. */
export function viewVisit(db: Database, { patientId, visitId }: { patientId: string; visitId: string }) {
  const visit = visitOf(db, { patientId, visitId });
  const record = loadRecord(db, patientId);
  const state = fold(record.events);
  const at = now(db);
  const clinic = clinicSlots(db, at);
  const names = visitNames(db, clinic);
  // What is asked on the page is what the visit's own step asks: by the versions that its tube goes by.
  const { pins } = pinned(visit, state);
  const protocol = record.books.protocol(pins.protocol);
  const calendar = record.books.calendar(pins.calendar);
  const tubes = visit.tubes.flatMap(({ tubeId, act }) => {
    const tube = state.tubes.find(({ id }) => id === tubeId);
    const row = projectionOf(db, patientId).tubes.find(({ id }) => id === tubeId);
    return tube === undefined || row === undefined
      ? []
      : [
          {
            tube,
            name: row.name,
            act,
            open: openTubes(visit).some((one) => one.tubeId === tubeId),
            catheterAge: catheterAge(tube, clinic.now.on),
            tractAge: tractAge(tube, clinic.now.on),
          },
        ];
  });
  const kinds = tubes.map(({ tube, act }) => ({ kind: tube.kind, act }));
  const asked =
    visit.place.kind === "elsewhere"
      ? []
      : prerequisitesOf({ tubes: kinds, on: visit.on }, calendar, protocol);
  const open = openOf(asked, visit.prepared).map(({ thing }) => thing);
  const { search: _search, contact: _contact, ...identity } = record.patient;
  if (tubes.length === 0) throw new DomainError({ code: "visit-not-booked" });
  return {
    today: clinic.now.on,
    at: clinic.now.at,
    zone: clinicOf(db).zone,
    patient: { ...identity, identifiers: identifiersOf(db, patientId) },
    visit,
    tubes,
    room: visit.place.kind === "here" ? names.room(visit.place.roomId) : null,
    rooms: clinic.rooms.map(({ id, name }) => ({ id, name })),
    prerequisites: asked.map((one) => ({
      ...one,
      open: open.includes(one.thing),
      answer: visit.prepared.find(({ thing }) => thing === one.thing) ?? null,
    })),
    /** Both classes are shown beside "who agreed the plan?"; nothing is computed. */
    bleeding: protocol.bleeding,
    conditions: state.conditions,
    clinical: state.clinical,
    against: standsAgainst(visit, { clinic, names }),
    steps: openSteps(state, record.books).filter(
      ({ tubeId }) => tubeId !== null && visit.tubes.some((one) => one.tubeId === tubeId),
    ),
    lastSeen: state.lastSeq,
  };
}

export type VisitView = ReturnType<typeof viewVisit>;
