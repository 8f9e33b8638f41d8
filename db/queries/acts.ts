import { desc, eq, lt, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import type { Rows } from "#db/queries/rows.ts";
import { acts } from "#db/schema/acts.ts";
import { staff } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Instant } from "#shared/day/instant.ts";

export type ActRow = typeof acts.$inferSelect;

const byId = prepared((orm) =>
  orm
    .select()
    .from(acts)
    .where(eq(acts.id, sql.placeholder("id")))
    .prepare(),
);

export const actById = (db: Database, id: string): ActRow | undefined => byId(db).get({ id });

export const addAct = inserter(acts);

/** Who did what before an instant, newest first. */
export const actsBefore = (db: Database, before: Instant, { limit, skip }: Rows) =>
  db.orm
    .select({ at: acts.recordedAt, command: acts.command, who: staff.fullName, actId: acts.id })
    .from(acts)
    .innerJoin(staff, eq(staff.id, acts.staffId))
    .where(lt(acts.recordedAt, before))
    .orderBy(desc(acts.recordedAt), desc(acts.id))
    .limit(limit)
    .offset(skip)
    .all();
