import { asc, sql } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import type { LogRow } from "#db/queries/readings.ts";
import { readings } from "#db/schema/readings.ts";
import type { Database } from "#db/sqlite.ts";
import type { Instant } from "#shared/day/instant.ts";

const tube = sql.placeholder("tubeId");
const since = sql.placeholder("since");

/** Before every instant that a row may hold. */
const EVER = sql.raw("-8640000000000000");

/** Where these days begin, or before them the earliest reading that reaches into them. */
const reached = sql`min(${since}, coalesce(
  (select min(from_at) from readings where tube_id = ${tube} and to_at >= ${since}), ${since}
))`;

/**
 * From which end of a reading on rows are read: from the last one before that time which nobody ever amended. One that was amended may not
 * stand, and what stands in its place may lie elsewhere.
 */
const start = sql`coalesce((
  select to_at from readings as one
  where tube_id = ${tube} and to_at < ${reached} and replaces is null and voided = 0
    and not exists (select 1 from readings as amends where amends.replaces = one.id)
  order by to_at desc limit 1
), ${EVER})`;

/** Rows of those days with all that amends them and all that they amend, whatever time that speaks of. */
const touched = sql`(
  with recursive touched(id) as (
    select id from readings where tube_id = ${tube} and to_at >= ${start}
    union select amended.replaces from readings as amended
      join touched on amended.id = touched.id where amended.replaces is not null
    union select amends.id from readings as amends join touched on amends.replaces = touched.id
  )
  select id from touched
)`;

const { id, payload, replaces, voided, recordedAt, recordedBy, toAt } = readings;
const recent = prepared((orm) =>
  orm
    .select({ id, payload, replaces, voided, recordedAt, recordedBy })
    .from(readings)
    .where(sql`${id} in ${touched}`)
    .orderBy(asc(toAt), asc(recordedAt), asc(id))
    .prepare(),
);

/** Rows of a tube's log from an instant on, and before it no more than it takes to tell what stands and since when: for lists. */
export const recentLogOfTube = (
  db: Database,
  asked: { readonly tubeId: string; readonly since: Instant },
): readonly LogRow[] => recent(db).all(asked);
