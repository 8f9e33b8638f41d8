import type { Parsed, Refusal } from "#shared/errors/refusal.ts";
import { parsed, unread } from "#shared/errors/refusal.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { type Answers, type DateOrder, LEFT_OUT } from "#shared/sheet/answers.ts";
import { dateCell } from "#shared/sheet/date-cell.ts";
import { FROM_THE_LIST } from "#shared/sheet/from-the-list.ts";
import { heading } from "#shared/sheet/heading.ts";
import { nameCell } from "#shared/sheet/name-cell.ts";
import { plainCell, saysUnknown } from "#shared/sheet/plain-cell.ts";
import type { SheetLine } from "#shared/sheet/sheet.ts";
import { dateFields, labelOf, type SheetField } from "#shared/sheet/sheet-fields.ts";
import { type TubeWords, tubeWords } from "#shared/sheet/tube-words.ts";
import { withUnitOf } from "#shared/sheet/unit-in-heading.ts";

/** How a whole sheet is read: its headings, what was answered, and the order of dates that came of it. */
export type Reading = {
  readonly headings: readonly string[];
  readonly answers: Answers;
  readonly dateOrder: DateOrder | null;
  readonly thisYear: number;
};

/** What is to be mended in a row, with the field of the column where it stands; null where it concerns the row. */
export type RowRefusal = { readonly field: SheetField | null; readonly refusal: Refusal };

export type RowTexts = {
  /** Typed into the patient's form and the tube's, as a person would. */
  readonly patient: Texts;
  readonly tube: Texts;
};

export type RowRead = {
  readonly texts: RowTexts;
  readonly refusals: readonly RowRefusal[];
};

type Cells = Partial<Record<SheetField, string>>;

/** Collects what is refused, so that a row is read to its end and says everything at once. */
class RowReader {
  readonly refusals: RowRefusal[] = [];
  constructor(readonly reading: Reading) {}

  keep<T>(field: SheetField | null, read: Parsed<T>, otherwise: T): T {
    if (read.ok) return read.value;
    this.refusals.push({ field, refusal: read.refusal });
    return otherwise;
  }
}

/** The cells by field. Several notes become one, each behind its heading; a bare size takes its unit from the heading. */
function cellsOf(reader: RowReader, { cells }: SheetLine): Cells {
  const { answers, headings } = reader.reading;
  const found: Cells = {};
  const notes: string[] = [];
  for (const [index, field] of answers.columns.entries()) {
    if (field === LEFT_OUT) continue;
    const text = reader.keep(field, plainCell(cells[index] ?? ""), "");
    const title = headings[index] ?? "";
    if (field === "note") {
      if (text !== "") notes.push(heading(title) === "note" ? text : `${title}: ${text}`);
    } else found[field] = field === "size" ? withUnitOf(title, text) : text;
  }
  return { ...found, note: notes.join("\n") };
}

const known = (cell: string | undefined): string => (cell === undefined || saysUnknown(cell) ? "" : cell);
/** A gap is stored as unknown: a "?" in a field that takes one. */
const orUnknown = (cell: string): string => (cell === "" || saysUnknown(cell) ? "?" : cell);

const YES = /^(?:y|yes|x|true|1|needed|required)$/i;
const NO = /^(?:n|no|none|false|0|not needed)$/i;

/** "Welsh" under "interpreter" says which language, and that one is needed. A gap says neither. */
function interpreterTexts({ needsInterpreter = "", language = "" }: Cells): Texts {
  const said = known(needsInterpreter);
  if (said === "") return { needsInterpreter: "", language: known(language) };
  if (YES.test(said)) return { needsInterpreter: "yes", language: known(language) };
  if (NO.test(said)) return { needsInterpreter: "no", language: known(language) };
  return { needsInterpreter: "yes", language: known(language) || said };
}

function nameTexts(reader: RowReader, cells: Cells): Texts {
  const { wholeName } = cells;
  if (wholeName === undefined)
    return { familyName: cells.familyName ?? "", givenName: cells.givenName ?? "" };
  const none = { familyName: "", givenName: "" };
  return reader.keep("wholeName", nameCell(wholeName, reader.reading.answers.nameOrder), none);
}

/** Several numbers in one cell, each on its line; "mornings or evenings" parts no numbers. */
const telephonesOf = (cell: string): string =>
  cell.includes("\n") ? cell : cell.replace(/\s*(?:;|\s\/\s|\bor\b|,)\s*(?=\+?[\d(])/g, "\n");

function patientTexts(reader: RowReader, cells: Cells, bornOn: string): Texts {
  const text = (field: SheetField): string => known(cells[field]);
  const number = text("number");
  if (/^\d(?:\.\d+)?e\+\d+$/i.test(number))
    reader.refusals.push({ field: "number", refusal: { code: "number-cut-short", args: { text: number } } });
  const secondNumber = text("secondNumber");
  return {
    ...nameTexts(reader, cells),
    birthOn: orUnknown(bornOn),
    number,
    issuer: text("issuer") || reader.reading.answers.issuer,
    telephones: telephonesOf(text("telephones")),
    secondNumber,
    secondIssuer: secondNumber === "" ? "" : text("secondIssuer") || reader.reading.answers.issuer,
    ...interpreterTexts(cells),
    alternateName: text("alternateName"),
    alternateTelephone: text("alternateTelephone"),
    homeNurse: text("homeNurse"),
    referrer: text("referrer"),
    familyDoctor: text("familyDoctor"),
    responsibleService: text("responsibleService"),
  };
}

type Dates = Readonly<Record<(typeof dateFields)[number], string>>;

function datesOf(reader: RowReader, cells: Cells): Dates {
  const { dateOrder: order, thisYear } = reader.reading;
  const entries = dateFields.map((field) => [
    field,
    reader.keep(field, dateCell(cells[field] ?? "", { field, order, thisYear }), ""),
  ]);
  return Object.fromEntries(entries) as Dates;
}

/** The headings of some fields as the list has them: "Next due" and "Review". */
function headingsOf({ headings, answers }: Reading, fields: readonly SheetField[]): string {
  const titles = fields.map((field) => `"${headings[answers.columns.indexOf(field)] ?? labelOf(field)}"`);
  return titles.join(" and ");
}

/** What the list says is planned; two plans in one row are refused, for one would be lost. */
function planText(reader: RowReader, cells: Cells, dates: Dates): string {
  const plans = [
    { field: "plan" as const, text: known(cells.plan) },
    ...(["exchange", "remove", "review"] as const).map((act) => {
      const field = `${act}By` as const;
      const by = known(dates[field]);
      return { field, text: by === "" ? "" : `${act} by ${by}` };
    }),
  ].filter(({ text }) => text !== "");
  if (plans.length > 1) {
    const columns = headingsOf(
      reader.reading,
      plans.map(({ field }) => field),
    );
    reader.refusals.push({ field: null, refusal: { code: "two-plans", args: { columns } } });
  }
  return plans[0]?.text ?? "";
}

/** Where no exchange is dated, the placement began the catheter's clock; a placement dated beside it dates the tract. */
function clockTexts({ exchangedOn, placedOn }: Dates): Texts {
  return { when: orUnknown(exchangedOn === "" ? placedOn : exchangedOn), tractSince: placedOn };
}

/** Of two cells that say the same thing; one that differs is refused, for one of them is wrong. */
function agreed(
  reader: RowReader,
  field: SheetField,
  [own, other]: readonly [string, string | null],
): string {
  if (own === "" || other === null) return own || (other ?? "");
  const same = (text: string): string =>
    text
      .toLowerCase()
      .replace(/[^\p{Letter}\p{Number}.,?~]/gu, "")
      .replace(/fr(?:ench)?|ch/, "f");
  if (same(own) !== same(other))
    reader.refusals.push({ field, refusal: { code: "cells-differ", args: { one: own, other } } });
  return own;
}

const TWO_BARE = /^\d+(?:[.,]\d+)?\s*(?:\/|-|&|to|or)\s*\d+(?:[.,]\d+)?$/i;
const nothingSaid = { kind: null, side: null, size: null, retention: null };

/** A size, perhaps with what holds it beside it. A word that is neither is left to the size's own field, which says what it takes. */
function sizeWords(cell: string): Parsed<TubeWords> {
  if (TWO_BARE.test(cell)) return unread("two-sizes", { text: cell });
  const read = tubeWords(cell);
  return read.ok || read.refusal.code === "two-sizes" ? read : parsed(nothingSaid);
}

function tubeFactTexts(reader: RowReader, cells: Cells): Texts {
  const inKind = reader.keep("kind", tubeWords(cells.kind ?? ""), nothingSaid);
  const inSize = reader.keep("size", sizeWords(known(cells.size)), nothingSaid);
  const size = inSize.size ?? known(cells.size);
  const side = agreed(reader, "side", [known(cells.side).replace(/[().]/g, ""), inKind.side]);
  const retention = known(cells.retention) || impliedRetention(cells, inKind) || (inSize.retention ?? "");
  if (inKind.kind === null && !reader.refusals.some(({ field }) => field === "kind"))
    reader.refusals.push({
      field: "kind",
      refusal: { code: "kind-not-said", args: { text: cells.kind ?? "" } },
    });
  return {
    kind: inKind.kind ?? "",
    side: orUnknown(side),
    size: orUnknown(agreed(reader, "size", [size, inKind.size])),
    retention,
  };
}

/** What holds it by the cell of the kind. The kind's own name alone does not gainsay a column that says "unknown". */
function impliedRetention({ kind = "", retention = "" }: Cells, inKind: TubeWords): string {
  const isNameAlone = inKind.kind === kind.toLowerCase();
  return saysUnknown(retention) && isNameAlone ? "" : (inKind.retention ?? "");
}

function tubeTexts(reader: RowReader, cells: Cells, dates: Dates): Texts {
  const text = (field: SheetField): string => known(cells[field]);
  return {
    ...tubeFactTexts(reader, cells),
    ...clockTexts(dates),
    plan: planText(reader, cells, dates),
    from: text("from") || FROM_THE_LIST,
    takes: text("takes"),
    fullLength: text("fullLength"),
    externalLength: text("externalLength"),
    flushOrder: text("flushOrder"),
    balloon: text("balloon"),
    cavity: text("cavity"),
    organ: text("organ"),
    route: text("route"),
    indication: text("indication"),
    role: text("role"),
    mode: text("mode"),
    note: text("note"),
  };
}

/** One row as a person would type it into the two forms, and what keeps it from being typed. */
export function rowTexts(reading: Reading, line: SheetLine): RowRead {
  const reader = new RowReader(reading);
  const cells = cellsOf(reader, line);
  const dates = datesOf(reader, cells);
  const { removedOn } = dates;
  if (known(cells.removedOn) !== "")
    reader.refusals.push({ field: "removedOn", refusal: { code: "tube-is-out", args: { text: removedOn } } });
  const texts = {
    patient: patientTexts(reader, cells, dates.birthOn),
    tube: tubeTexts(reader, cells, dates),
  };
  return { texts, refusals: reader.refusals };
}
