import { and, asc, desc, eq, gte, lt, sql } from "drizzle-orm";
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

/** Looks at one thing of one tube. */
const ofOpening = () =>
  and(
    eq(reads.subjectKind, "tube"),
    eq(reads.subjectId, sql.placeholder("tubeId")),
    eq(reads.procedure, sql.placeholder("procedure")),
  );

const openedSince = prepared((orm) =>
  orm
    .select({
      staffId: reads.staffId,
      who: staff.fullName,
      role: staff.role,
      isApprover: staff.isApprover,
      at: sql<Instant>`max(${reads.at})`,
    })
    .from(reads)
    .innerJoin(staff, eq(staff.id, reads.staffId))
    .where(and(ofOpening(), gte(reads.at, sql.placeholder("since"))))
    .groupBy(reads.staffId)
    .orderBy(desc(sql`max(${reads.at})`), asc(reads.staffId))
    .prepare(),
);

type Opened = { readonly tubeId: string; readonly procedure: string; readonly since: Instant };

/** Who was shown that of a tube since an instant, each once with the last time, newest first. */
export const whoOpenedSince = (db: Database, opened: Opened) => openedSince(db).all(opened);

const openedLast = prepared((orm) =>
  orm
    .select({ at: reads.at })
    .from(reads)
    .where(and(ofOpening(), eq(reads.staffId, sql.placeholder("staffId"))))
    .orderBy(desc(reads.at))
    .limit(1)
    .prepare(),
);

/** When somebody was last shown that of a tube; undefined is never. */
export const lastOpenedBy = (
  db: Database,
  opened: Omit<Opened, "since"> & { readonly staffId: string },
): Instant | undefined => openedLast(db).get(opened)?.at;

export type ReadSubject = Pick<ReadRow, "subjectKind" | "subjectId">;

/** Who saw this patient, tube or list, newest first. */
export const readsOf = (db: Database, subject: ReadSubject, limit: number) =>
  readsWhere(db)
    .where(and(eq(reads.subjectKind, subject.subjectKind), eq(reads.subjectId, subject.subjectId)))
    .orderBy(...newestFirst)
    .limit(limit)
    .all();
