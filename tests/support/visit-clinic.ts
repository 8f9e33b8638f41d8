import { visitsOf } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { askRooms } from "#server/rooms/change-rooms.ts";
import { roomsOf } from "#server/rooms/rooms-of.ts";
import type { Closure } from "#shared/day/clinic-days.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { Visit } from "#shared/visit/visit.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { addInventedPatient } from "#tests/support/patient.ts";

/** Staffed from 8 to 16 on working days, an hour of it kept free; and one that opens at 13 on Wednesdays alone. */
const rooms: readonly Texts[] = [
  { name: "Room 1", can: "fluoroscopy, ultrasound, sedation", hours: "mon-fri 8-16", reserve: "60" },
  { name: "Room 2", can: "fluoroscopy", hours: "wed 13-16", reserve: "" },
];

/** A clinic with two rooms and the patient Ottoline Brackenfold, who has no tube yet. */
export function clinicWithRooms(closures: readonly Closure[] = []): Database & Disposable {
  const db = testDatabase({ isDemo: false, closures });
  addInventedPatient(db, "patient-1", "000417");
  for (const texts of rooms)
    askRooms(
      { db, staff: people.lead },
      { actId: newId(), seen: roomsOf(db).version, asked: { kind: "add", texts } },
    );
  return db;
}

const nurse = (db: Database) => callerAs(db, people.nurse);

const lastSeenOf = async (db: Database, patientId: string): Promise<number> =>
  (await nurse(db).patient.view({ patientId })).state.lastSeq;

/** What every act about a patient carries, as a page that was just opened sends it. */
export const aboutNow = async (db: Database, patientId = "patient-1") => ({
  actId: newId(),
  lastSeen: await lastSeenOf(db, patientId),
  patientId,
});

/** A left nephrostomy of 8 F, placed on 1 September 2026. Its id. */
export async function aTube(db: Database, texts: Texts = {}, patientId = "patient-1"): Promise<string> {
  const plain = { kind: "pcn", side: "l", size: "8 f", when: "1 sep 2026" };
  const about = await aboutNow(db, patientId);
  const { tubeId } = await nurse(db).record.tube({ ...about, texts: { ...plain, ...texts } });
  return tubeId ?? "";
}

type Booked = {
  readonly tubes: readonly string[];
  readonly act?: "exchange" | "check" | "removal";
  readonly texts?: Texts;
  readonly urgent?: boolean;
  readonly patientId?: string;
};

/** Wednesday 11 November 2026, 09:30, Room 1, by the form that the nurse fills: its id, and its act. */
export async function book(db: Database, booked: Booked): Promise<{ visitId: string; actId: string }> {
  const { tubes, act = "exchange", texts = {}, urgent = false, patientId = "patient-1" } = booked;
  return nurse(db).visit.booked({
    ...(await aboutNow(db, patientId)),
    tubes: tubes.map((tubeId) => ({ tubeId, act })),
    urgent,
    texts: { on: "11 nov 2026", at: "9:30", room: "Room 1", minutes: "30", ...texts },
  });
}

/** The same, its id alone. */
export const aVisit = async (db: Database, booked: Booked): Promise<string> =>
  (await book(db, booked)).visitId;

export const theVisit = (db: Database, visitId: string, patientId = "patient-1"): Visit => {
  const found = visitsOf(db, patientId).find(({ id }) => id === visitId);
  if (found === undefined) throw new Error(`no visit ${visitId}`);
  return found.visit;
};
