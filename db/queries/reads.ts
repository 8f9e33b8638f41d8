import { and, desc, eq, lt, sql } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import type { Rows } from "#db/queries/rows.ts";
import { reads } from "#db/schema/reads.ts";
import { staff } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Instant } from "#shared/day/instant.ts";

export type ReadRow = Omit<typeof reads.$inferSelect, "id">;

const insert = prepared((orm) =>
  orm
    .insert(reads)
    .values({
      at: sql`${sql.placeholder("at")}`,
      staffId: sql.placeholder("staffId"),
      procedure: sql.placeholder("procedure"),
      subjectKind: sql.placeholder("subjectKind"),
      subjectId: sql.placeholder("subjectId"),
    })
    .prepare(),
);

/** One statement of its own, so no transaction is asked for. */
export function addRead(db: Database, row: ReadRow): void {
  insert(db).run(row);
}

const shown = {
  at: reads.at,
  who: staff.fullName,
  procedure: reads.procedure,
  subjectKind: reads.subjectKind,
  subjectId: reads.subjectId,
};

const readsWhere = (db: Database) =>
  db.orm.select(shown).from(reads).innerJoin(staff, eq(staff.id, reads.staffId)).$dynamic();

const newestFirst = [desc(reads.at), desc(reads.id)];

/** Who saw what before an instant, newest first. */
export const readsBefore = (db: Database, before: Instant, { limit, skip }: Rows) =>
  readsWhere(db)
    .where(lt(reads.at, before))
    .orderBy(...newestFirst)
    .limit(limit)
    .offset(skip)
    .all();

export type ReadSubject = Pick<ReadRow, "subjectKind" | "subjectId">;

/** Who saw this patient, tube or list, newest first. */
export const readsOf = (db: Database, subject: ReadSubject, limit: number) =>
  readsWhere(db)
    .where(and(eq(reads.subjectKind, subject.subjectKind), eq(reads.subjectId, subject.subjectId)))
    .orderBy(...newestFirst)
    .limit(limit)
    .all();
