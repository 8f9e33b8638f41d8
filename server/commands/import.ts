import { bringList } from "#server/commands/bring-list.ts";
import { databaseFile } from "#server/commands/database-file.ts";
import { importOptions } from "#server/commands/list-options.ts";
import { telling } from "#server/commands/telling.ts";
import { importRecordFile } from "#server/export/import-record-file.ts";
import { startsAsRecord } from "#server/export/starts-as-record.ts";

const count = (rows: number): string => rows.toLocaleString("en-US");

/** The whole record of another Dwellbook, into a new database. */
function bringRecord(database: string, file: string): void {
  const { rows, patients } = importRecordFile({ database, file });
  console.log(`${count(rows)} rows brought in; the tubes and steps of ${count(patients)} patients computed.`);
  console.log("Nobody has a password here yet. Give one to each person with: npm run staff -- password");
}

/** `npm run import -- FILE`: what the file is decides what is done with it. */
async function importFile(args: readonly string[]): Promise<void> {
  const { file, ...options } = importOptions(args);
  const database = databaseFile();
  if (startsAsRecord(file)) bringRecord(database, file);
  else if (!(await bringList({ database, file, options }))) process.exitCode = 1;
}

await telling(() => importFile(process.argv.slice(2)));
