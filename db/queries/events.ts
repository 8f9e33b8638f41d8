import { and, asc, count, eq, exists, inArray, ne, notExists, or, type SQLWrapper, sql } from "drizzle-orm";
import { alias } from "drizzle-orm/sqlite-core";
import { inserter, prepared } from "#db/prepared.ts";
import { events, eventTubes } from "#db/schema/events.ts";
import { patients } from "#db/schema/patients.ts";
import { visits } from "#db/schema/projections.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import type { Day } from "#shared/day/day.ts";
import type { Instant } from "#shared/day/instant.ts";

export type EventRow = typeof events.$inferSelect;

const ofPatient = prepared((orm) =>
  orm
    .select()
    .from(events)
    .where(eq(events.patientId, sql.placeholder("patientId")))
    .orderBy(asc(events.seq))
    .prepare(),
);

const tubesOfPatient = prepared((orm) =>
  orm
    .select({ eventId: eventTubes.eventId, tubeId: eventTubes.tubeId })
    .from(eventTubes)
    .innerJoin(events, eq(events.id, eventTubes.eventId))
    .where(eq(events.patientId, sql.placeholder("patientId")))
    .orderBy(asc(eventTubes.eventId), asc(sql`event_tubes.rowid`))
    .prepare(),
);

const ofAct = prepared((orm) =>
  orm
    .select()
    .from(events)
    .where(eq(events.actId, sql.placeholder("actId")))
    .orderBy(asc(events.seq))
    .prepare(),
);

export type StoredEvent = { readonly row: EventRow; readonly tubes: readonly string[] };

/** A patient's stream in recorded order, each event with its tubes in the order in which it names them. */
export function eventsOfPatient(db: Database, patientId: string): readonly StoredEvent[] {
  const tubes = new Map<string, string[]>();
  for (const { eventId, tubeId } of tubesOfPatient(db).all({ patientId })) {
    const named = tubes.get(eventId);
    if (named === undefined) tubes.set(eventId, [tubeId]);
    else named.push(tubeId);
  }
  return ofPatient(db)
    .all({ patientId })
    .map((row) => ({ row, tubes: tubes.get(row.id) ?? [] }));
}

export const eventsOfAct = (db: Database, actId: string): readonly EventRow[] => ofAct(db).all({ actId });

const inOtherActs = prepared((orm) =>
  orm
    .select({ id: events.id })
    .from(events)
    .where(
      and(eq(events.patientId, sql.placeholder("patientId")), ne(events.actId, sql.placeholder("actId"))),
    )
    .limit(1)
    .prepare(),
);

/** Whether anything else was recorded of a patient than by that act. */
export const isRecordedInOtherActs = (db: Database, of: { patientId: string; actId: string }): boolean =>
  inOtherActs(db).get(of) !== undefined;

const insertEvent = inserter(events);
const insertTube = inserter(eventTubes);

export function appendEvent(tx: Tx, { row, tubes }: StoredEvent): void {
  insertEvent(tx, row);
  for (const tubeId of tubes) insertTube(tx, { eventId: row.id, tubeId });
}

const everyPatient = prepared((orm) =>
  orm.selectDistinct({ patientId: events.patientId }).from(events).orderBy(asc(events.patientId)).prepare(),
);

/** Every patient who has events, for a rebuild. */
export const patientsWithEvents = (db: Database): readonly string[] =>
  everyPatient(db)
    .all()
    .map(({ patientId }) => patientId);

const moved = alias(events, "moved");

/** What a stored booking, or a move of it, says of its day. */
const lies = (payload: SQLWrapper) => sql`json_extract(${payload}, '$.on') >= ${sql.placeholder("from")}`;

const bookingsGone = prepared((orm) =>
  orm
    .select()
    .from(events)
    .where(
      and(
        eq(events.kind, "visit booked"),
        notExists(orm.select({ id: visits.id }).from(visits).where(eq(visits.id, events.id))),
        or(
          lies(events.payload),
          exists(
            orm
              .select({ id: moved.id })
              .from(moved)
              .where(
                and(
                  eq(moved.patientId, events.patientId),
                  eq(moved.kind, "visit moved"),
                  sql`json_extract(${moved.payload}, '$.visit') = ${events.id}`,
                  lies(moved.payload),
                ),
              ),
          ),
        ),
      ),
    )
    .orderBy(asc(events.id))
    .prepare(),
);

/** Bookings for a day or after it, by themselves or by a move, of which no visit is left: they were taken back. */
export const bookingsTakenBack = (db: Database, from: Day): readonly EventRow[] =>
  bookingsGone(db).all({ from });

const entered = prepared((orm) =>
  orm
    .select({ entries: count(), newest: sql<Instant>`max(${events.recordedAt})` })
    .from(events)
    .where(
      or(
        eq(events.patientId, sql.placeholder("patientId")),
        inArray(
          events.patientId,
          orm
            .select({ id: patients.id })
            .from(patients)
            .where(eq(patients.joinedInto, sql.placeholder("patientId"))),
        ),
      ),
    )
    .prepare(),
);

/** How many entries a record has, those that are corrected or taken back among them, and when the newest was made. */
export const entriesOf = (db: Database, patientId: string): { entries: number; newest: Instant | null } =>
  entered(db).get({ patientId }) ?? { entries: 0, newest: null };
