import { clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";
import { dayAt, type Instant, instant } from "#shared/day/instant.ts";

/**
 * What the machine's clock says. Only for how long a person is signed in and how long a sign-in is refused: a demo that is
 * moved a week ahead signs nobody out. Everything of the record uses `now`.
 */
export const machineNow = (): Instant => instant(Date.now());

/** A moment of the machine as the clinic's own clock shows it. */
export const clinicInstant = (db: Database, at: Instant): Instant => instant(at + clinicOf(db).clockOffsetMs);

/** The clinic's now. A demo may be ahead by the offset that its clinic row holds; no other database can hold one. */
export const now = (db: Database): Instant => clinicInstant(db, machineNow());

/** The clinic's day. */
export const today = (db: Database): Day => dayAt(now(db), clinicOf(db).zone);
