import { clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";
import { dayAt, type Instant, instant } from "#shared/day/instant.ts";

/** The only reader of the clock. A demo may be ahead by the offset that its clinic row holds; no other database can hold one. */
export const now = (db: Database): Instant => instant(Date.now() + clinicOf(db).clockOffsetMs);

/** The clinic's day. */
export const today = (db: Database): Day => dayAt(now(db), clinicOf(db).zone);
