import type { Parsed, Refusal } from "#shared/errors/refusal.ts";
import type { Place } from "#shared/fit/inside.ts";
import { boresField } from "#shared/record/field/bores-field.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { plainCell, saysUnknown } from "#shared/sheet/plain-cell.ts";
import type { SheetLine } from "#shared/sheet/sheet.ts";
import { withUnitOf } from "#shared/sheet/unit-in-heading.ts";
import type { ColumnsRead, ShelfColumn } from "#shared/shelf/shelf-columns.ts";

/** What is to be mended in a row, with the column where it stands; null where it concerns the row. */
export type RowRefusal = { readonly column: ShelfColumn | null; readonly refusal: Refusal };

/** `insides`: a text for each place that the row speaks of. */
export type ShelfRowRead = {
  readonly texts: Texts;
  readonly insides: Readonly<Partial<Record<Place, string>>>;
  readonly refusals: readonly RowRefusal[];
};

type Cells = Partial<Record<ShelfColumn, string>>;

const sized: readonly ShelfColumn[] = [
  "outside",
  "tolerance",
  "takes",
  "takesDevice",
  "hub",
  "shaft",
  "endHoleInside",
  "valve",
  "stopcock",
  "length",
];

const places = [
  ["hub", "hub"],
  ["shaft", "shaft"],
  ["endHoleInside", "end hole"],
  ["valve", "valve"],
  ["stopcock", "stopcock"],
] as const satisfies readonly (readonly [ShelfColumn, Place])[];

const REPORTED = /^(?:reported|told(?: by others)?|not (?:seen|measured)(?: here)?)$/i;
const ESTIMATED = /^(?:estimated|estimate|about|approx(?:imate(?:ly)?)?|~)$/i;
const CONFIRMED = /^(?:confirmed|measured(?: here)?|label(?:led)?|(?:the )?package)$/i;

/** How well a whole row is known; a word that is none of these is left to the form to refuse. */
function certaintyOf(cell: string): { readonly certainty: string; readonly isAbout: boolean } {
  if (ESTIMATED.test(cell)) return { certainty: "confirmed", isAbout: true };
  if (REPORTED.test(cell)) return { certainty: "reported", isAbout: false };
  return { certainty: CONFIRMED.test(cell) ? "confirmed" : cell, isAbout: false };
}

/** A fact that the thing has and nobody knows; a dash or "n/a" may as well say that it has none, and says nothing. */
const NOBODY_KNOWS = /^(?:\?+|unknown|unk|not (?:known|measured))\.?$/i;

const bores = boresField({ label: "" });

type Reader = {
  readonly cells: Cells;
  readonly refusals: RowRefusal[];
};

/** The cells by column; a bare size takes its unit from the heading. */
function readCells(line: SheetLine, headings: readonly string[], columns: ColumnsRead): Reader {
  const refusals: RowRefusal[] = [];
  const keep = (column: ShelfColumn, read: Parsed<string>): string => {
    if (read.ok) return read.value;
    refusals.push({ column, refusal: read.refusal });
    return "";
  };
  const cells: Cells = {};
  for (const [at, column] of columns.entries()) {
    if (column === null) continue;
    const text = keep(column, plainCell(line.cells[at] ?? ""));
    cells[column] = sized.includes(column) ? withUnitOf(headings[at] ?? "", text) : text;
  }
  return { cells, refusals };
}

/** What a cell says of a fact: "" for nothing, "?" for unknown. */
function factCell(cell: string, isAbout: boolean): string {
  if (NOBODY_KNOWS.test(cell)) return "?";
  if (saysUnknown(cell)) return "";
  return isAbout && cell !== "" && !cell.startsWith("~") ? `~${cell}` : cell;
}

/** One row as a person would type it into the form of a type, and what keeps it from being typed. A blank text says nothing. */
export function shelfRowTexts(
  line: SheetLine,
  { headings, columns }: { readonly headings: readonly string[]; readonly columns: ColumnsRead },
): ShelfRowRead {
  const { cells, refusals } = readCells(line, headings, columns);
  const said = (column: ShelfColumn): string => {
    const cell = cells[column] ?? "";
    return saysUnknown(cell) ? "" : cell;
  };
  const { certainty, isAbout } = certaintyOf(said("certainty"));
  const size = (column: ShelfColumn): string => factCell(cells[column] ?? "", isAbout);
  const word = (column: ShelfColumn): string => factCell(cells[column] ?? "", false);
  const insides = places.flatMap(([column, place]): [Place, string][] => {
    const text = size(column);
    if (text === "") return [];
    const read = bores.read(`${place} ${text}`);
    if (!read.ok) refusals.push({ column, refusal: read.refusal });
    return read.ok ? [[place, text]] : [];
  });
  return {
    refusals,
    insides: Object.fromEntries(insides),
    texts: {
      sort: said("sort"),
      name: said("name"),
      outside: size("outside"),
      takes: size("takes"),
      takesDevice: size("takesDevice"),
      endHole: word("endHole"),
      length: size("length"),
      retention: word("retention"),
      kinds: said("kinds").replaceAll(";", ","),
      tolerance: word("tolerance"),
      certainty,
    },
  };
}
