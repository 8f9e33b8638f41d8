import { asc, eq, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { tubes } from "#db/schema/projections.ts";
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

const { id, payload, replaces, voided, recordedAt, recordedBy } = readings;
const logOf = prepared((orm) =>
  orm
    .select({ id, payload, replaces, voided, recordedAt, recordedBy })
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

/** What makes the readings of a tube and who wrote it, row by row, by the end of its interval. */
export type LogRow = Pick<ReadingRow, "id" | "payload" | "replaces" | "voided" | "recordedAt" | "recordedBy">;

/** The same rows with nothing beside what makes the readings: every entry of the patient computes steps from them. */
export const logOfTube = (db: Database, tubeId: string): readonly LogRow[] => logOf(db).all({ tubeId });

const onePatients = prepared((orm) =>
  orm
    .select({ id: readings.id })
    .from(tubes)
    .innerJoin(readings, eq(readings.tubeId, tubes.id))
    .where(eq(tubes.patientId, sql.placeholder("patientId")))
    .limit(1)
    .prepare(),
);

/** Whether anything was ever logged of a patient's tubes. */
export const hasReadings = (db: Database, patientId: string): boolean =>
  onePatients(db).get({ patientId }) !== undefined;

export const readingById = (db: Database, id: string): ReadingRow | undefined => byId(db).get({ id });

export const addReading = inserter(readings);
