import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { loadSheet } from "#server/sheet/load-sheet.ts";
import { previewRow } from "#server/sheet/preview-row.ts";
import { setAsideRows } from "#server/sheet/set-aside.ts";
import { sheetReading, standSheet } from "#server/sheet/stand-sheet.ts";
import type { Standing } from "#shared/sheet/stand.ts";

/** Rows of each table that one page shows. */
const SHOWN = 200;
const SAMPLES = 3;

const ofKind = <K extends Standing["stands"]>(found: readonly Standing[], kind: K) =>
  found.filter((standing): standing is Extract<Standing, { stands: K }> => standing.stands === kind);

/** A list that waits: its columns, what is asked about it, and as far as that is answered how each row will stand. */
export async function viewSheet(db: Database, { sheetId, page }: { sheetId: string; page: number }) {
  const kept = loadSheet(db, sheetId);
  const { sheet, answers, fileName } = kept;
  const { order, reading, refusals, unclearName } = sheetReading(db, kept);
  const found = refusals.length > 0 ? [] : await standSheet(db, kept);
  const coming = ofKind(found, "comes in");
  const aside = ofKind(found, "set aside");
  const from = page * SHOWN;
  return {
    today: today(db),
    fileName,
    answers,
    order: { ...order, readAs: reading.dateOrder },
    unclearName,
    refusals,
    repeated: sheet.repeated,
    rowCount: sheet.rows.length,
    columns: sheet.headings.map((title, index) => ({
      title,
      says: answers.columns[index] ?? "left out",
      samples: sheet.rows
        .map(({ cells }) => (cells[index] ?? "").trim())
        .filter((cell) => cell !== "")
        .slice(0, SAMPLES),
    })),
    counts: {
      coming: coming.length,
      aside: aside.length,
      patients: new Set(coming.map(({ read }) => JSON.stringify(read.details.identifiers[0]))).size,
    },
    here: ofKind(found, "here already").map(({ row }) => row),
    above: ofKind(found, "said above").map(({ row, above }) => ({ row, above })),
    noTube: ofKind(found, "no tube").map(({ row }) => row),
    aside: setAsideRows(kept, aside).slice(0, SHOWN),
    coming: coming.slice(from, from + SHOWN).map((standing) => previewRow(db, standing)),
    pages: { page, last: Math.max(0, Math.ceil(coming.length / SHOWN) - 1) },
  };
}

export type SheetView = Awaited<ReturnType<typeof viewSheet>>;
