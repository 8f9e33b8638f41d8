import { clinicIfAny } from "#db/queries/clinic.ts";
import { deferPointers, type RecordRow, recordAdder, rowThatPointsNowhere } from "#db/queries/record-rows.ts";
import type { RecordTableName } from "#db/record-tables.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction, type Tx } from "#db/transaction.ts";
import { type RecordSource, readRecord } from "#server/export/read-record.ts";
import { rebuildAll } from "#server/record/rebuild.ts";
import { DomainError } from "#shared/errors/refusal.ts";

export type Imported = { readonly rows: number; readonly patients: number };

function refuseWhatPointsNowhere(tx: Tx): void {
  const found = rowThatPointsNowhere(tx);
  if (found !== undefined) throw new DomainError({ code: "record-row-points-nowhere", args: found });
}

function addRows(tx: Tx, source: RecordSource): number {
  const adders = new Map<RecordTableName, (row: RecordRow) => boolean>();
  let rows = 0;
  for (const { table, place, row } of readRecord(source)) {
    const add = adders.get(table) ?? recordAdder(tx, table);
    adders.set(table, add);
    if (!add(row)) throw new DomainError({ code: "record-row-damaged", args: { table, row: place } });
    rows += 1;
  }
  return rows;
}

/**
 * Brings a whole record into a database that holds no clinic, and computes tubes and open steps from its events. All of it or
 * nothing. Throws `clinic-already-there`, what `readRecord` throws, and `record-row-points-nowhere`.
 */
export function importRecord(db: Database, source: RecordSource): Imported {
  return inTransaction(db, (tx) => {
    if (clinicIfAny(tx) !== undefined)
      throw new DomainError({ code: "clinic-already-there", args: { file: tx.sqlite.name } });
    deferPointers(tx);
    const rows = addRows(tx, source);
    refuseWhatPointsNowhere(tx);
    const patients = rebuildAll(tx);
    // A step may be given to somebody whom the file does not hold: that stands in a payload, and shows only now.
    refuseWhatPointsNowhere(tx);
    return { rows, patients };
  });
}
