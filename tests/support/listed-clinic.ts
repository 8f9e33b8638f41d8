import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { addDays, day } from "#shared/day/day.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { called, type Entry, exchanged, handedOver, placed, takenOver } from "#tests/support/factories.ts";
import { addInventedPatient, recordAs } from "#tests/support/patient.ts";
import { command } from "#tests/support/told.ts";
import { here, visitBooked, visitNoted } from "#tests/support/visit-factories.ts";

/** Fri 6 Nov 2026. A nephrostomy asks for an exchange after 63 / 77 / 90 days. */
export const TODAY = day("2026-11-06");
export const ago = (days: number): string => addDays(TODAY, -days);

/** One patient with tubes, the first under the patient's name; the first call is done. A visit has the id "visit of NAME". */
export function record(db: Database, name: string, entries: readonly Entry[]): void {
  addInventedPatient(db, name, `number of ${name}`);
  const all = [...entries, called({ tube: name, on: TODAY })];
  recordAs(
    db,
    all.map((entry) => ({
      ...command(entry),
      eventId: entry.kind === "visit booked" ? `visit of ${name}` : newId(),
    })),
    name,
  );
}

export const nephrostomy = (tube: string, days: number): Entry => placed({ tube, on: ago(days) });
const elsewhere = { kind: "elsewhere", where: "Far Dale General", from: 600 } as const;

type Booking = NonNullable<Parameters<typeof visitBooked>[0]>;
export const booked = (tube: string, said: Booking = {}): Entry =>
  visitBooked({
    tubes: [{ tubeId: tube, act: "exchange" }],
    on: ago(3),
    visitOn: "2026-11-11",
    place: here("09:30", 30, `room of ${tube}`),
    ...said,
  });

export const noted = (name: string, said: Parameters<typeof visitNoted>[0]): Entry =>
  visitNoted({ visit: `visit of ${name}`, on: ago(1), ...said });

/** Something for each list, and a tube of which nothing is due yet. */
export function listedClinic(): Database & Disposable {
  const db = testDatabase();
  record(db, "in time", [nephrostomy("in time", 20)]);
  record(db, "window opens today", [nephrostomy("window opens today", 63)]);
  record(db, "target today", [nephrostomy("target today", 77)]);
  record(db, "target yesterday", [nephrostomy("target yesterday", 78)]);
  record(db, "latest today", [nephrostomy("latest today", 90)]);
  record(db, "latest yesterday", [nephrostomy("latest yesterday", 91)]);
  record(db, "undated", [takenOver({ tube: "undated", on: "?", recordedOn: TODAY })]);
  record(db, "booked", [nephrostomy("booked", 70), booked("booked")]);
  record(db, "proposed", [nephrostomy("proposed", 30), booked("proposed", { state: "proposed" })]);
  record(db, "confirmed", [nephrostomy("confirmed", 30), booked("confirmed"), noted("confirmed", {})]);
  record(db, "elsewhere", [nephrostomy("elsewhere", 30), booked("elsewhere", { place: elsewhere })]);
  record(db, "missed", [
    nephrostomy("missed", 30),
    booked("missed", { visitOn: ago(1) }),
    noted("missed", { state: "did not attend" }),
  ]);
  record(db, "given away", [nephrostomy("given away", 30), handedOver({ tube: "given away", on: ago(2) })]);
  record(db, "told", [
    nephrostomy("told", 70),
    exchanged({ tube: "told", on: ago(5), elsewhere: "Far Dale General", recordedOn: ago(4) }),
  ]);
  return db;
}

export const nurseLists = (db: Database) => callerAs(db, people.nurse).list;
type Lines = readonly { readonly patient: { readonly id: string } }[];
export const patientsIn = (lines: Lines) => lines.map(({ patient }) => patient.id);
