import { appendFileSync, mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { claimFile } from "#db/claim-file.ts";
import type { Database } from "#db/sqlite.ts";
import { exportPieces } from "#server/export/export-part.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { type ExportPart, exportPartNames } from "#shared/words/exports.ts";

/** Writes one file of an export behind what stands in `file`. */
export function appendPieces(db: Database, part: ExportPart, file: string): void {
  for (const piece of exportPieces(db, part)) appendFileSync(file, piece);
}

/**
 * Writes every file of an export into a folder, which is made where there is none; their owner alone may read them. Returns their
 * names. Throws `backup-exists` rather than write over a file; what was written is gone then.
 */
export function writeExport(db: Database, folder: string): readonly string[] {
  mkdirSync(folder, { recursive: true });
  const written: string[] = [];
  try {
    for (const part of exportPartNames) {
      const file = join(folder, part);
      if (!claimFile(file)) throw new DomainError({ code: "backup-exists", args: { file } });
      written.push(file);
      appendPieces(db, part, file);
    }
    return written;
  } catch (error) {
    for (const file of written) rmSync(file);
    throw error;
  }
}
