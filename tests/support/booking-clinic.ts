import { visitsOf } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { bookVisit, moveVisit } from "#server/visits/book-visit.ts";
import { noteVisit } from "#server/visits/note-visit.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { minute, room } from "#tests/factories/visit.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { placed } from "#tests/support/factories.ts";
import { addInventedPatient, recordAs } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";
import { command } from "#tests/support/told.ts";

/** Monday, 8:00 in London. */
export const NOW = "2026-11-02T08:00:00Z";
const rooms = [
  room({ reserve: 60 }),
  room({
    id: "room-2",
    name: "Room 2",
    can: [],
    hours: [{ weekday: 3, from: minute("09:00"), to: minute("12:00") }],
  }),
];

/** Two patients with a nephrostomy each, of Fri 14 Aug 2026: 16 Oct, 30 Oct, 12 Nov by the example row. */
export function clinic(): Database & Disposable {
  const db = testDatabase({ isDemo: false, rooms });
  addInventedPatient(db, "patient-1", "000417");
  addInventedPatient(db, "patient-2", "000418");
  recordAs(db, [{ ...command(placed()), eventId: "p1" }], "patient-1");
  recordAs(db, [{ ...command(placed({ tube: "tube-2" })), eventId: "p2" }], "patient-2");
  return db;
}

export const doing = (db: Database) => ({ db, staff: people.nurse });
const tubeOf = { "patient-1": "tube-1", "patient-2": "tube-2" } as const;
type Who = keyof typeof tubeOf;

export const book = (db: Database, texts: Texts, patientId: Who = "patient-1") =>
  bookVisit(doing(db), {
    actId: newId(),
    patientId,
    lastSeen: 99,
    tubes: [{ tubeId: tubeOf[patientId], act: "exchange" }],
    urgent: false,
    texts,
  });
export const slot = { on: "4 nov 2026", at: "9:30", room: "Room 1" };
export const move = (db: Database, visitId: string, texts: Texts) =>
  moveVisit(doing(db), {
    actId: newId(),
    patientId: "patient-1",
    lastSeen: 99,
    visitId,
    urgent: false,
    texts,
  });
export const note = (
  db: Database,
  visitId: string,
  state: "confirmed" | "arrived" | "did not attend" | "cancelled",
  texts: Texts = {},
) => noteVisit(doing(db), { actId: newId(), patientId: "patient-1", lastSeen: 99, visitId, state, texts });
export const codes = (work: () => unknown) => refusalsOf(work).map(({ code, field }) => [code, field]);
export const states = (db: Database, patientId: Who = "patient-1") =>
  visitsOf(db, patientId).map(({ state, visitOn, fromMinute, takesRoom }) => [
    state,
    visitOn,
    fromMinute,
    takesRoom,
  ]);
