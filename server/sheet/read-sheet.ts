import Papa from "papaparse";
import { decodeSheet } from "#server/sheet/decode-sheet.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { withoutAside } from "#shared/sheet/aside-sheet.ts";
import type { Encoding } from "#shared/sheet/encoding.ts";
import { findHeadings, headingsIn, type IsHeading } from "#shared/sheet/find-headings.ts";
import type { Sheet, SheetLine } from "#shared/sheet/sheet.ts";
import { isHeading } from "#shared/sheet/sheet-fields.ts";

const delimiters = [",", ";", "\t", "|"] as const;
/** Enough lines, and letters of them, to pass a title and meet the headings. */
const LOOKED_AT = 20;
const LETTERS_LOOKED_AT = 1 << 18;

/** The first line by which some spreadsheets are told the delimiter. They do not count it as a row. */
const SEP = /^sep=(.)\r?\n/i;

const linesOf = (cells: readonly (readonly string[])[]): SheetLine[] =>
  cells.map((own, index) => ({ row: index + 1, cells: own }));

/** The top alone: by a delimiter that is not the list's own a quoted cell seems to have no end, and is looked for in all of it. */
const topOf = (text: string): string =>
  text
    .slice(0, LETTERS_LOOKED_AT)
    .split(/\r\n|\r|\n/, LOOKED_AT)
    .join("\n");

const mostHeadings = (top: string, delimiter: string, isHeading: IsHeading): number => {
  const { data } = Papa.parse<string[]>(top, { delimiter });
  return Math.max(0, ...linesOf(data).map((line) => headingsIn(line, isHeading)));
};

/** The delimiter by which the most headings are found: a decimal comma misleads a count of commas, not this. */
function delimiterOf(text: string, isHeading: IsHeading): string {
  const top = topOf(text);
  const counted = delimiters.map((delimiter) => ({
    delimiter,
    headings: mostHeadings(top, delimiter, isHeading),
  }));
  return counted.toSorted((a, b) => b.headings - a.headings)[0]?.delimiter ?? ",";
}

function parse(text: string, isHeading: IsHeading): SheetLine[] {
  const sep = SEP.exec(text);
  const body = sep === null ? text : text.slice(sep[0].length);
  const { data, errors } = Papa.parse<string[]>(body, {
    delimiter: sep?.[1] ?? delimiterOf(body, isHeading),
  });
  const quote = errors.find(({ type }) => type === "Quotes");
  if (quote !== undefined)
    throw new DomainError({ code: "quote-not-closed", args: { row: (quote.row ?? 0) + 1 } });
  return linesOf(data);
}

/**
 * A file or a pasted block as a sheet of the kind that has these headings. Throws a DomainError with the one sentence that says what is
 * wrong with it: no text, a quotation mark left open, no headings, too wide, too long, nothing in it.
 */
export function readSheetOf(isHeading: IsHeading, bytes: Uint8Array, encoding: Encoding | null): Sheet {
  const read = findHeadings(parse(decodeSheet(bytes, encoding), isHeading), isHeading);
  if (!read.ok) throw new DomainError(read.refusal);
  return read.value;
}

/** The same of a list of tubes; a file of rows set aside as the list that it came from. */
export const readSheet = (bytes: Uint8Array, encoding: Encoding | null): Sheet =>
  withoutAside(readSheetOf(isHeading, bytes, encoding));
