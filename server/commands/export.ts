import { clinicIfAny } from "#db/queries/clinic.ts";
import { snapshotOf } from "#db/snapshot.ts";
import { databaseFile } from "#server/commands/database-file.ts";
import { fileNamed } from "#server/commands/file-named.ts";
import { telling } from "#server/commands/telling.ts";
import { writeExport } from "#server/export/write-export.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** `npm run export -- FOLDER`: the whole record as JSON, and its tables for a spreadsheet, all of one moment. */
async function exportAll([named]: readonly string[]): Promise<void> {
  if (named === undefined)
    throw new DomainError({ code: "text-missing", args: { what: "the folder for the export" } });
  const file = databaseFile();
  const db = snapshotOf(file);
  try {
    if (clinicIfAny(db) === undefined) throw new DomainError({ code: "clinic-missing", args: { file } });
    for (const written of writeExport(db, fileNamed(named))) console.log(written);
  } finally {
    db.sqlite.close();
  }
}

await telling(() => exportAll(process.argv.slice(2)));
