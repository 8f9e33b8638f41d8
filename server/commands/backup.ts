import { backUp } from "#db/backup.ts";
import { openDatabase } from "#db/connection.ts";
import { databaseFile } from "#server/commands/database-file.ts";
import { fileNamed } from "#server/commands/file-named.ts";
import { telling } from "#server/commands/telling.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** `npm run backup -- FILE`: a checked copy of the clinic's database, while it is in use. */
async function backup([named]: readonly string[]): Promise<void> {
  if (named === undefined)
    throw new DomainError({ code: "text-missing", args: { what: "the file for the copy" } });
  const file = fileNamed(named);
  const db = openDatabase(databaseFile());
  try {
    const { pages } = await backUp(db, file);
    console.log(`${file}: ${pages} pages copied and checked.`);
  } finally {
    db.sqlite.close();
  }
}

await telling(() => backup(process.argv.slice(2)));
