import { clinicOf } from "#db/queries/clinic.ts";
import type { PatientRow } from "#db/queries/patients.ts";
import { logOfTube } from "#db/queries/readings.ts";
import { calendarRow, protocolRow } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { standingOf } from "#server/output/standing-readings.ts";
import { reachedAnyTime, reachOf } from "#shared/call/reach.ts";
import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import { clinicCalendarSchema } from "#shared/day/clinic-days-schema.ts";
import { liftProtocol } from "#shared/protocol/lift-protocol.ts";
import { type Protocol, protocolSchema } from "#shared/protocol/protocol.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import type { Books } from "#shared/step/open-steps.ts";

type Shelf = { readonly protocols: Map<number, Protocol>; readonly calendars: Map<number, ClinicCalendar> };

/** Versions are never edited, so each is read and checked once for each open database. */
const shelves = new WeakMap<Database["sqlite"], Shelf>();

function shelfOf({ sqlite }: Database): Shelf {
  const shelf = shelves.get(sqlite) ?? { protocols: new Map(), calendars: new Map() };
  shelves.set(sqlite, shelf);
  return shelf;
}

/** One version of the clinic's protocol, with its approval. Throws when there is none: a pin points to a row. */
export function protocolOf(db: Database, version: number): Protocol {
  const shelf = shelfOf(db).protocols;
  const known = shelf.get(version);
  if (known !== undefined) return known;
  const row = protocolRow(db, version);
  if (row === undefined) throw new Error(`no protocol version ${version}`);
  const approved =
    row.approvedBy === null || row.approvedOn === null ? null : { by: row.approvedBy, on: row.approvedOn };
  const protocol = protocolSchema.parse({ ...(liftProtocol(row.rows) as object), version, approved });
  shelf.set(version, protocol);
  return protocol;
}

/** One version of the clinic's calendar. */
export function calendarOf(db: Database, version: number): ClinicCalendar {
  const shelf = shelfOf(db).calendars;
  const known = shelf.get(version);
  if (known !== undefined) return known;
  const row = calendarRow(db, version);
  if (row === undefined) throw new Error(`no calendar version ${version}`);
  const calendar = clinicCalendarSchema.parse({ ...(row.content as object), version });
  shelf.set(version, calendar);
  return calendar;
}

/** The tables, and what is known of a patient beside the entries; null: of nobody. */
export const booksOf = (db: Database, patient: Pick<PatientRow, "birthOn" | "contact"> | null): Books => ({
  protocol: (version) => protocolOf(db, version),
  calendar: (version) => calendarOf(db, version),
  bornOn: patient?.birthOn ?? null,
  zone: clinicOf(db).zone,
  reach: patient === null ? reachedAnyTime : reachOf(patient.contact as Contact),
  readings: (tubeId) => standingOf(logOfTube(db, tubeId)),
});
