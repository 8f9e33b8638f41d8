import { databaseFile } from "#server/commands/database-file.ts";
import { fileNamed } from "#server/commands/file-named.ts";
import { telling } from "#server/commands/telling.ts";
import { importRecordFile } from "#server/export/import-record-file.ts";
import { DomainError } from "#shared/errors/refusal.ts";

const count = (rows: number): string => rows.toLocaleString("en-US");

/** The whole record of another Dwellbook, into a new database. */
function bringRecord(database: string, file: string): void {
  const { rows, patients } = importRecordFile({ database, file });
  console.log(`${count(rows)} rows brought in; the tubes and steps of ${count(patients)} patients computed.`);
  console.log("Nobody has a password here yet. Give one to each person with: npm run staff -- password");
}

/** `npm run import -- FILE`: what the file is decides what is done with it. */
async function importFile([named]: readonly string[]): Promise<void> {
  if (named === undefined)
    throw new DomainError({ code: "text-missing", args: { what: "the file to bring in" } });
  bringRecord(databaseFile(), fileNamed(named));
}

await telling(() => importFile(process.argv.slice(2)));
