import { and, asc, eq, sql } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import { events } from "#db/schema/events.ts";
import { patients } from "#db/schema/patients.ts";
import { openSteps } from "#db/schema/projections.ts";
import type { Database } from "#db/sqlite.ts";

const { why } = openSteps;

/** Whose a step is says it only roughly: the line of its why says it exactly. */
const handedToNobody = sql`exists (select 1 from json_each(${why}) where value ->> 'code' = 'flag-not-handed')`;

const unhanded = prepared((orm) =>
  orm
    .select({
      flagId: events.id,
      patientId: openSteps.patientId,
      familyName: patients.familyName,
      givenName: patients.givenName,
      level: sql<string>`${why} ->> '$[0].args.level'`,
      /** The name of its row, which is short; own words where it has none. */
      says: sql<string>`coalesce(${events.payload} ->> '$.row', ${why} ->> '$[0].args.says')`,
      on: events.occurredEarliest,
      at: events.occurredAt,
      recordedAt: events.recordedAt,
      zone: events.zone,
    })
    .from(openSteps)
    .innerJoin(patients, eq(patients.id, openSteps.patientId))
    .innerJoin(events, eq(events.id, sql`${why} ->> '$[0].eventId'`))
    .where(and(eq(openSteps.kind, "red flag"), handedToNobody))
    .orderBy(
      sql`coalesce(${events.occurredEarliest}, ${openSteps.dueOn})`,
      sql`coalesce(${events.occurredAt}, 0)`,
      asc(events.recordedAt),
      asc(events.id),
    )
    .prepare(),
);

/** Red flags that nobody has, the oldest first; one without a clock time stands before those of its day. By the index of steps by kind. */
export const unhandedFlags = (db: Database) => unhanded(db).all();
