import type { Database } from "#db/sqlite.ts";
import { readShelfSheet, type ShelfSheet } from "#server/shelf/read-shelf-sheet.ts";
import { differences } from "#shared/shelf/differences.ts";
import type { ShelfStanding } from "#shared/shelf/stand-rows.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { typeWords } from "#shared/words/shelf-type.ts";

/** One row of a sheet as a person reads it before it is brought in. */
function previewRow(standing: ShelfStanding) {
  const { row } = standing;
  switch (standing.stands) {
    case "new":
    case "here already":
      return { row, stands: standing.stands, words: typeWords(standing.type) };
    case "changes":
      return {
        row,
        stands: standing.stands,
        words: typeWords(standing.type),
        differences: differences(standing.was, standing.type),
      };
    case "set aside": {
      const reasons = standing.reasons.map(({ label, refusal }) => ({
        label,
        sentence: refusalSentence(refusal),
      }));
      return { row, stands: standing.stands, cells: standing.cells, reasons };
    }
  }
}

/** A sheet as it would stand on the shelf, row by row. Throws what `readShelfSheet` throws. */
export function previewShelfSheet(db: Database, sheet: ShelfSheet) {
  const { leftOut, rows } = readShelfSheet(db, sheet);
  return { leftOut, rows: rows.map(previewRow) };
}

export type ShelfPreview = ReturnType<typeof previewShelfSheet>;
