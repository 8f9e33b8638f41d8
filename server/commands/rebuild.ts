import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { backUp } from "#db/backup.ts";
import type { Difference } from "#db/compare-projections.ts";
import { openDatabase } from "#db/connection.ts";
import { emptyProjections } from "#db/queries/projections.ts";
import { inTransaction } from "#db/transaction.ts";
import { databaseFile } from "#server/commands/database-file.ts";
import { telling } from "#server/commands/telling.ts";
import { compareWithRebuilt, proposeSuperseded, rebuildAll } from "#server/record/rebuild.ts";

const name = ({ table, id, found, columns }: Difference): string =>
  `${table} ${id}: ${found} (${columns.join(", ")})`;

/**
 * `npm run rebuild`: computes every row of the projections again from events, in an empty copy, and compares row by row. Exit 1 names
 * the rows that do not stand as their events make them; `--write` then puts them right.
 */
async function rebuild(file: string, write: boolean): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), "dwellbook-rebuild-"));
  const stands = openDatabase(file);
  try {
    const copy = join(folder, "rebuilt.sqlite");
    await backUp(stands, copy);
    const fresh = openDatabase(copy);
    inTransaction(fresh, emptyProjections);
    const patients = rebuildAll(fresh, (done, of) => console.log(`${done} of ${of} patients`));
    const found = compareWithRebuilt(stands, fresh);
    const proposed = proposeSuperseded(stands, fresh, found);
    fresh.sqlite.close();
    for (const difference of found.spoiled) console.log(name(difference));
    if (proposed > 0) console.log(`${proposed} dates would change under the new rules: proposed, not moved.`);
    console.log(`${patients} patients rebuilt, ${found.spoiled.length} rows differ.`);
    if (found.spoiled.length > 0 && write) console.log(`${rebuildAll(stands)} patients written again.`);
    return found.spoiled.length > 0 && !write ? 1 : 0;
  } finally {
    stands.sqlite.close();
    rmSync(folder, { recursive: true });
  }
}

await telling(async () => {
  process.exitCode = await rebuild(databaseFile(), process.argv.includes("--write"));
});
