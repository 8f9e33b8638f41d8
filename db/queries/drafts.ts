import { and, desc, eq, lte, ne, sql } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import { drafts } from "#db/schema/drafts.ts";
import { staff } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import type { Instant } from "#shared/day/instant.ts";

export type DraftRow = typeof drafts.$inferSelect;
export type DraftKey = Pick<DraftRow, "staffId" | "form" | "subject">;

const isKey = () =>
  and(
    eq(drafts.staffId, sql.placeholder("staffId")),
    eq(drafts.form, sql.placeholder("form")),
    eq(drafts.subject, sql.placeholder("subject")),
  );

const byKey = prepared((orm) => orm.select().from(drafts).where(isKey()).prepare());
const dropByKey = prepared((orm) => orm.delete(drafts).where(isKey()).prepare());

const ofOthers = prepared((orm) =>
  orm
    .select({ by: staff.fullName, savedAt: drafts.savedAt, content: drafts.content })
    .from(drafts)
    .innerJoin(staff, eq(staff.id, drafts.staffId))
    .where(
      and(
        ne(drafts.staffId, sql.placeholder("staffId")),
        eq(drafts.form, sql.placeholder("form")),
        eq(drafts.subject, sql.placeholder("subject")),
      ),
    )
    .orderBy(desc(drafts.savedAt))
    .prepare(),
);

/** What others than this person typed in a form about a subject and did not save, the newest first. */
export const draftsOfOthers = (db: Database, key: DraftKey) => ofOthers(db).all(key);

export const draftByKey = (db: Database, key: DraftKey): DraftRow | undefined => byKey(db).get(key);

export function saveDraftRow(tx: Tx, row: DraftRow): void {
  tx.orm
    .insert(drafts)
    .values(row)
    .onConflictDoUpdate({
      target: [drafts.staffId, drafts.form, drafts.subject],
      set: { content: row.content, savedAt: row.savedAt },
    })
    .run();
}

export function dropDraftRow(tx: Tx, key: DraftKey): void {
  dropByKey(tx).run(key);
}

export function dropDraftsSavedBy(tx: Tx, at: Instant): void {
  tx.orm.delete(drafts).where(lte(drafts.savedAt, at)).run();
}
