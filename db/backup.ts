import { claimFile } from "#db/claim-file.ts";
import { naming } from "#db/connection.ts";
import { connect, type Database } from "#db/sqlite.ts";
import { DomainError } from "#shared/errors/refusal.ts";

export type Backup = { readonly file: string; readonly pages: number };

/** Throws a plain Error when a copy is not whole: that is nothing a reader can mend by typing. */
function refuseUnlessWhole(file: string): void {
  const { sqlite } = connect(file);
  try {
    const integrity = sqlite.pragma("integrity_check", { simple: true });
    if (integrity !== "ok") throw new Error(`the copy is damaged: ${integrity}`);
    const broken = sqlite.pragma("foreign_key_check");
    if (Array.isArray(broken) && broken.length > 0) throw new Error(`${broken.length} rows point nowhere`);
    // One file that holds everything: without this the copy leaves a log and an index beside itself.
    sqlite.pragma("journal_mode = DELETE");
  } finally {
    sqlite.close();
  }
}

/**
 * An online copy while others go on reading and writing, checked before it counts: every page, and every row that points to
 * another. Refuses to write over a file (`backup-exists`). To restore, put the copy where the database was.
 */
export async function backUp(db: Database, file: string): Promise<Backup> {
  if (!claimFile(file)) throw new DomainError({ code: "backup-exists", args: { file } });
  const { totalPages } = await db.sqlite.backup(file);
  naming(file, () => refuseUnlessWhole(file));
  return { file, pages: totalPages };
}
