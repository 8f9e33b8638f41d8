import { migrateFile } from "#db/migrate.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

/** Brings the database file that is named up to this code, or says in one sentence why it cannot. */
function migrateNamed(file: string): void {
  const { applied, backup } = migrateFile(file);
  const steps = applied.length === 1 ? "1 migration" : `${applied.length} migrations`;
  if (applied.length === 0) console.log("up to date");
  else console.log(backup === null ? steps : `${steps}, the old file is kept as ${backup}`);
}

const [file] = process.argv.slice(2);
if (file === undefined) throw new RangeError("migrate.ts needs the database file");
try {
  migrateNamed(file);
} catch (error) {
  if (!(error instanceof DomainError)) throw error;
  console.error(error.refusals.map(refusalSentence).join(" "));
  process.exitCode = 1;
}
