import { readSheetOf } from "#server/sheet/read-sheet.ts";
import { DomainError, type Refusal } from "#shared/errors/refusal.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { type FileColumn, fileColumns } from "#shared/protocol/rows/file-lines.ts";
import { type FileReading, readFileLines, type TypedLine } from "#shared/protocol/rows/read-file-lines.ts";
import { unguarded } from "#shared/sheet/guard.ts";
import { heading } from "#shared/sheet/heading.ts";
import type { Sheet } from "#shared/sheet/sheet.ts";

const columnCalled = (text: string): FileColumn | undefined =>
  fileColumns.find((column) => column === heading(text));

/** `called` is for readers: a file does without. */
const needed = ["row", "figure", "value"] as const satisfies readonly FileColumn[];

const ofWholeFile = (refusals: readonly Refusal[]): FileReading => ({
  ok: false,
  errors: refusals.map((refusal) => ({ line: null, row: null, refusal })),
});

function columnRefusals(columns: readonly (FileColumn | undefined)[]): readonly Refusal[] {
  return needed.flatMap((label): readonly Refusal[] => {
    const count = columns.filter((column) => column === label).length;
    if (count === 1) return [];
    const code = count === 0 ? "protocol-column-missing" : "protocol-column-twice";
    return [{ code, args: { label } }];
  });
}

function linesOf({ headings, rows }: Sheet): readonly TypedLine[] {
  const columns = headings.map(columnCalled);
  const cell = (cells: readonly string[], column: FileColumn): string =>
    unguarded(cells[columns.indexOf(column)] ?? "").trim();
  return rows.map(({ row, cells }) => ({
    line: row,
    row: cell(cells, "row"),
    figure: cell(cells, "figure"),
    value: cell(cells, "value"),
  }));
}

/** What a list of tubes lacks is said otherwise of a table of rows. */
function ofTable({ code, args }: Refusal): Refusal {
  if (code === "headings-missing") return { code: "protocol-column-missing", args: { label: needed[0] } };
  return code === "sheet-empty" ? { code: "protocol-file-empty" } : { code, ...(args && { args }) };
}

/**
 * The rows in a file as a clinic mended it in a spreadsheet, with the head of the version that is given; or everything that is to mend, by
 * the line of the file. Nothing of a file is taken by half.
 */
export function readProtocolFile(bytes: Uint8Array, head: Protocol): FileReading {
  try {
    const sheet = readSheetOf((text) => columnCalled(text) !== undefined, bytes, null);
    const refusals = columnRefusals(sheet.headings.map(columnCalled));
    return refusals.length > 0 ? ofWholeFile(refusals) : readFileLines(linesOf(sheet), head);
  } catch (error) {
    if (error instanceof DomainError) return ofWholeFile(error.refusals.map(ofTable));
    throw error;
  }
}
