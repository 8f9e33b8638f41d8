import { and, asc, count, desc, eq, lte, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { acts } from "#db/schema/acts.ts";
import { patientIdentifiers } from "#db/schema/patients.ts";
import { tubes } from "#db/schema/projections.ts";
import { sheetBatches, sheetColumns, sheetRows, sheets } from "#db/schema/sheets.ts";
import { staff } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import type { Instant } from "#shared/day/instant.ts";

export type SheetRow = typeof sheets.$inferSelect;

const byId = prepared((orm) =>
  orm
    .select()
    .from(sheets)
    .where(eq(sheets.id, sql.placeholder("id")))
    .prepare(),
);

const standing = prepared((orm) =>
  orm
    .select({ tubeId: sheetRows.tubeId })
    .from(sheetRows)
    .innerJoin(tubes, eq(tubes.id, sheetRows.tubeId))
    .where(eq(sheetRows.digest, sql.placeholder("digest")))
    .limit(1)
    .prepare(),
);

const typedOf = prepared((orm) =>
  orm
    .select({ typed: sheetRows.typed })
    .from(sheetRows)
    .where(
      and(eq(sheetRows.actId, sql.placeholder("actId")), eq(sheetRows.tubeId, sql.placeholder("tubeId"))),
    )
    .prepare(),
);

const batchRows = (orm: Database["orm"]) =>
  orm
    .select({
      actId: sheetBatches.actId,
      fileName: sheetBatches.fileName,
      rowsInSheet: sheetBatches.rowsInSheet,
      at: acts.recordedAt,
      who: staff.fullName,
      /** Tubes that it brought in, and how many of them still have a record. */
      tubes: count(sheetRows.tubeId),
      standing: count(tubes.id),
    })
    .from(sheetBatches)
    .innerJoin(acts, eq(acts.id, sheetBatches.actId))
    .innerJoin(staff, eq(staff.id, acts.staffId))
    .leftJoin(sheetRows, eq(sheetRows.actId, sheetBatches.actId))
    .leftJoin(tubes, eq(tubes.id, sheetRows.tubeId))
    .groupBy(sheetBatches.actId)
    .$dynamic();

const newest = prepared((orm) =>
  batchRows(orm)
    .orderBy(desc(acts.recordedAt), asc(sheetBatches.actId))
    .limit(sql.placeholder("limit"))
    .prepare(),
);

const batchByAct = prepared((orm) =>
  batchRows(orm)
    .where(eq(sheetBatches.actId, sql.placeholder("actId")))
    .prepare(),
);

export const sheetById = (db: Database, id: string): SheetRow | undefined => byId(db).get({ id });

/** Whether a row of this digest was brought in and its tube has a record still: an undone batch counts no more. */
export const rowStands = (db: Database, digest: string): boolean =>
  standing(db).get({ digest }) !== undefined;

/** What the row of a list was typed into the form of that tube as; undefined where the act brought in no such tube. */
export const typedInList = (db: Database, row: { actId: string; tubeId: string }): unknown =>
  typedOf(db).get(row)?.typed;

/** What was brought in, the newest first. */
export const sheetBatchesNewest = (db: Database, limit: number) => newest(db).all({ limit });

/** What one act brought in; undefined where it brought in no list. */
export const sheetBatchOf = (db: Database, actId: string) => batchByAct(db).get({ actId });

/** Sheets that wait, the newest first, without their cells. */
export const waitingSheets = (db: Database, limit: number) =>
  db.orm
    .select({ id: sheets.id, fileName: sheets.fileName, touchedAt: sheets.touchedAt })
    .from(sheets)
    .orderBy(desc(sheets.touchedAt), asc(sheets.id))
    .limit(limit)
    .all();

export const rememberedColumns = (db: Database) => db.orm.select().from(sheetColumns).all();

/** Whoever issued most of the record numbers here; undefined where there is none yet. */
export const commonIssuer = (db: Database): string | undefined =>
  db.orm
    .select({ issuer: patientIdentifiers.issuer })
    .from(patientIdentifiers)
    .groupBy(patientIdentifiers.issuer)
    .orderBy(desc(count()), asc(patientIdentifiers.issuer))
    .limit(1)
    .get()?.issuer;

export const addSheet = inserter(sheets);
export const addSheetBatch = inserter(sheetBatches);
export const addSheetRow = inserter(sheetRows);

export function answerSheetRow(
  tx: Tx,
  { id, answers, touchedAt }: Omit<SheetRow, "cells" | "fileName" | "staffId">,
) {
  tx.orm.update(sheets).set({ answers, touchedAt }).where(eq(sheets.id, id)).run();
}

export function dropSheetRow(tx: Tx, id: string): void {
  tx.orm.delete(sheets).where(eq(sheets.id, id)).run();
}

export function dropSheetsTouchedBy(tx: Tx, at: Instant): void {
  tx.orm.delete(sheets).where(lte(sheets.touchedAt, at)).run();
}

export function rememberColumn(tx: Tx, row: typeof sheetColumns.$inferSelect): void {
  tx.orm
    .insert(sheetColumns)
    .values(row)
    .onConflictDoUpdate({
      target: sheetColumns.heading,
      set: { field: row.field, updatedAt: row.updatedAt },
    })
    .run();
}
