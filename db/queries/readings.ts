import { asc, eq, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { readings } from "#db/schema/readings.ts";
import type { Database } from "#db/sqlite.ts";

export type ReadingRow = typeof readings.$inferSelect;

const ofTube = prepared((orm) =>
  orm
    .select()
    .from(readings)
    .where(eq(readings.tubeId, sql.placeholder("tubeId")))
    .orderBy(asc(readings.toAt), asc(readings.recordedAt), asc(readings.id))
    .prepare(),
);

const byId = prepared((orm) =>
  orm
    .select()
    .from(readings)
    .where(eq(readings.id, sql.placeholder("id")))
    .prepare(),
);

const ofAct = prepared((orm) =>
  orm
    .select()
    .from(readings)
    .where(eq(readings.actId, sql.placeholder("actId")))
    .orderBy(asc(readings.id))
    .prepare(),
);

export const readingsOfAct = (db: Database, actId: string): readonly ReadingRow[] => ofAct(db).all({ actId });

/** Every row of a tube, replaced and voided ones too, by the end of its interval. */
export const readingsOfTube = (db: Database, tubeId: string): readonly ReadingRow[] =>
  ofTube(db).all({ tubeId });

export const readingById = (db: Database, id: string): ReadingRow | undefined => byId(db).get({ id });

export const addReading = inserter(readings);
