import { existsSync } from "node:fs";
import { parseArgs } from "node:util";
import { migrateFile } from "#db/migrate.ts";
import { telling } from "#server/commands/telling.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** Brings a database file up to this code; makes it if it is missing, unless `--existing` says that it must be there. */
function migrate(file: string, mustExist: boolean): void {
  if (mustExist && !existsSync(file)) throw new DomainError({ code: "database-missing", args: { file } });
  const { applied, backup } = migrateFile(file);
  const steps = applied.length === 1 ? "1 migration" : `${applied.length} migrations`;
  if (applied.length === 0) console.log("up to date");
  else console.log(backup === null ? steps : `${steps}, the file as it was is kept as ${backup}`);
}

const { positionals, values } = parseArgs({
  options: { existing: { type: "boolean" } },
  allowPositionals: true,
});
const [file] = positionals;
if (file === undefined) throw new RangeError("migrate.ts needs the database file");
await telling(async () => migrate(file, values.existing ?? false));
