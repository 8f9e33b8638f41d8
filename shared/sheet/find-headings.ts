import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import { heading } from "#shared/sheet/heading.ts";
import { MOST_COLUMNS, MOST_IN_CELL, MOST_ROWS, type Sheet, type SheetLine } from "#shared/sheet/sheet.ts";

/** Above the headings stand at most a title, a date and a few blank lines. */
const LOOKED_AT = 12;

const isBlank = ({ cells }: SheetLine): boolean => cells.every((cell) => cell.trim() === "");
/** Whether a text is a heading of the kind of list that is looked for, word for word. */
export type IsHeading = (text: string) => boolean;

/** How many cells of a line are headings. */
export const headingsIn = ({ cells }: SheetLine, isHeading: IsHeading): number =>
  cells.filter(isHeading).length;

/** The line with the most cells that are headings of ours; the first of equals. */
function headingLine(lines: readonly SheetLine[], isHeading: IsHeading): SheetLine | undefined {
  const found = (line: SheetLine): number => headingsIn(line, isHeading);
  const [best] = lines.slice(0, LOOKED_AT).toSorted((a, b) => found(b) - found(a));
  return best !== undefined && found(best) > 0 ? best : undefined;
}

const repeats = (headings: readonly string[], { cells }: SheetLine): boolean =>
  headings.every((text, index) => heading(text) === heading(cells[index] ?? ""));

const lastFilled = ({ cells }: SheetLine): number => cells.findLastIndex((cell) => cell.trim() !== "") + 1;

/** Cells beyond the headings keep a place, so that nothing typed is lost: they are asked for as columns of their own. */
const widened = (headings: readonly string[], width: number): string[] =>
  Array.from({ length: width }, (_, index) => headings[index]?.trim() || `column ${index + 1}`);

function tooMuch(lines: readonly SheetLine[]): Parsed<never> | null {
  if (lines.length > MOST_ROWS) return unread("sheet-too-long", { rows: lines.length, limit: MOST_ROWS });
  const width = Math.max(0, ...lines.map(lastFilled));
  if (width > MOST_COLUMNS) return unread("sheet-too-wide", { columns: width, limit: MOST_COLUMNS });
  const long = lines.find(({ cells }) => cells.some((cell) => cell.length > MOST_IN_CELL));
  return long === undefined ? null : unread("cell-too-long", { row: long.row, limit: MOST_IN_CELL });
}

/**
 * Lines of cells as a sheet: headings found, titles above them and blank lines left out, headings that are repeated named.
 * Refusals: `sheet-empty`, `sheet-too-wide`, `sheet-too-long`, `cell-too-long`, `headings-missing`.
 */
export function findHeadings(lines: readonly SheetLine[], isHeading: IsHeading): Parsed<Sheet> {
  const filled = lines.filter((line) => !isBlank(line));
  if (filled.length === 0) return unread("sheet-empty");
  const refused = tooMuch(filled);
  if (refused !== null) return refused;
  const top = headingLine(filled, isHeading);
  if (top === undefined) return unread("headings-missing");
  const below = filled.filter(({ row }) => row > top.row);
  const own = top.cells.slice(0, lastFilled(top));
  const repeated = below.filter((line) => repeats(own, line));
  const rows = below.filter((line) => !repeated.includes(line));
  if (rows.length === 0) return unread("sheet-empty");
  const width = Math.max(own.length, ...rows.map(lastFilled));
  const cellsOf = ({ cells }: SheetLine): string[] => Array.from({ length: width }, (_, n) => cells[n] ?? "");
  return parsed({
    headings: widened(own, width),
    rows: rows.map((line) => ({ row: line.row, cells: cellsOf(line) })),
    repeated: repeated.map(({ row }) => row),
  });
}
