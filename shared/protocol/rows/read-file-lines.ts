import type { Refusal } from "#shared/errors/refusal.ts";
import { type Protocol, protocolSchema } from "#shared/protocol/protocol.ts";
import { addressOf, addressParts, nameField } from "#shared/protocol/rows/address.ts";
import { PLACE } from "#shared/protocol/rows/file-lines.ts";
import type { RowData } from "#shared/protocol/rows/leaves.ts";
import { addressAt, standingRows, withRows } from "#shared/protocol/rows/place-row.ts";
import { leavesIn, readRow } from "#shared/protocol/rows/read-row.ts";
import { type RowSort, rowSort, rowSorts } from "#shared/protocol/rows/row-sorts.ts";
import { senseOf } from "#shared/protocol/rows/sense.ts";
import { rowName } from "#shared/words/protocol/row-names.ts";

/** A line of the file as it stands there, with its number. */
export type TypedLine = {
  readonly line: number;
  readonly row: string;
  readonly figure: string;
  readonly value: string;
};

/** What is to mend: in which line, null where the whole file is meant, and of which row. */
export type FileError = {
  readonly line: number | null;
  readonly row: string | null;
  readonly refusal: Refusal;
};

export type FileReading =
  | { readonly ok: true; readonly protocol: Protocol }
  | { readonly ok: false; readonly errors: readonly FileError[] };

/** The lines of one row, by the figure that each says. */
type RowLines = {
  readonly address: string;
  readonly sort: RowSort;
  readonly key: string | null;
  readonly first: number;
  readonly byFigure: ReadonlyMap<string, TypedLine>;
};

type Gathered = { readonly rows: readonly RowLines[]; readonly errors: readonly FileError[] };

const errorAt = (line: TypedLine, refusal: Refusal): FileError => ({
  line: line.line,
  row: line.row,
  refusal,
});

function sortOfLine({ row }: TypedLine): { readonly sort: RowSort; readonly key: string | null } | null {
  const { path, key } = addressParts(row);
  const sort = rowSort(path);
  return sort === undefined || sort.isList !== (key !== null) || key === "" ? null : { sort, key };
}

/** Lines by their row, in whatever order they stand. */
function gather(lines: readonly TypedLine[]): Gathered {
  const rows = new Map<string, RowLines & { readonly byFigure: Map<string, TypedLine> }>();
  const errors: FileError[] = [];
  for (const line of lines) {
    const found = sortOfLine(line);
    if (found === null) {
      errors.push(errorAt(line, { code: "row-unknown", args: { text: line.row } }));
      continue;
    }
    const row = rows.get(line.row) ?? { ...found, address: line.row, first: line.line, byFigure: new Map() };
    rows.set(line.row, row);
    const before = row.byFigure.get(line.figure);
    if (before === undefined) row.byFigure.set(line.figure, line);
    else {
      const args = { text: line.figure, row: line.row, line: before.line };
      errors.push(errorAt(line, { code: "figure-twice", args }));
    }
  }
  return { rows: [...rows.values()], errors };
}

const textsOf = ({ byFigure }: RowLines): Readonly<Record<string, string>> =>
  Object.fromEntries(
    [...byFigure].flatMap(([figure, { value }]) => (figure === PLACE ? [] : [[figure, value]])),
  );

const isCounted = (key: string): boolean => /^[1-9]\d{0,5}$/.test(key);

/** The field that tells which row of a list it is, and that has the place beside it. */
const nameOf = ({ isList, fields }: RowSort) =>
  isList ? nameField(fields.map(({ name }) => name)) : undefined;

/** Figures that the row has not, and those that it lacks. */
function figureErrors(row: RowLines): readonly FileError[] {
  const { sort, address, byFigure, first } = row;
  const asked = [
    ...(nameOf(sort) === undefined ? [] : [PLACE]),
    ...leavesIn(sort, textsOf(row)).map(({ path }) => path),
  ];
  const unknown = [...byFigure.values()].filter(({ figure }) => !asked.includes(figure));
  return [
    ...unknown.map((line) =>
      errorAt(line, { code: "figure-unknown", args: { text: line.figure, row: address } }),
    ),
    ...asked
      .filter((figure) => !byFigure.has(figure))
      .map(
        (text): FileError => ({
          line: first,
          row: address,
          refusal: { code: "figure-missing", args: { text, row: address } },
        }),
      ),
  ];
}

/** A row as it was read, with where it goes in its list. */
type ReadRow = { readonly lines: RowLines; readonly place: number; readonly row: RowData | null };

type RowAnswer = { readonly errors: readonly FileError[]; readonly read: ReadRow | null };

const refused = (errors: readonly FileError[]): RowAnswer => ({ errors, read: null });

/** Where a refusal of a row stands: in the line of its figure. */
const errorOf = ({ byFigure, first, address }: RowLines, { field, ...refusal }: Refusal): FileError => ({
  line: byFigure.get(field ?? "")?.line ?? first,
  row: address,
  refusal,
});

function readLines(lines: RowLines): RowAnswer {
  const errors = figureErrors(lines);
  if (errors.length > 0) return refused(errors);
  const { sort, key, byFigure, address } = lines;
  const name = nameOf(sort);
  const placeText = name === undefined ? (key ?? "1") : (byFigure.get(PLACE)?.value.trim() ?? "");
  if (!isCounted(placeText))
    return refused([errorOf(lines, { code: "figure-not-whole", field: PLACE, args: { text: placeText } })]);
  const reading = readRow(sort, textsOf(lines));
  if (reading.read === "refused") return refused(reading.refusals.map((refusal) => errorOf(lines, refusal)));
  const row = reading.read === "row" ? reading.row : null;
  const place = Number(placeText);
  // The row's own id or kind is a figure too, and has to say what its address says.
  if (row !== null && name !== undefined && addressAt(sort, row, 0) !== address) {
    const args = { text: String(row[name]), row: address };
    return refused([errorOf(lines, { code: "row-says-otherwise", field: name, args })]);
  }
  return { errors: [], read: { lines, place, row } };
}

/** What the table always has and the file does not speak of, so that a file that was cut is found. */
const notSpokenOf = (rows: readonly RowLines[]): readonly FileError[] =>
  rowSorts
    .filter((sort) => !sort.isList && !rows.some((row) => row.sort === sort))
    .map(({ path }) => ({
      line: null,
      row: addressOf(path, null),
      refusal: { code: "row-not-in-file", args: { row: rowName(path) } },
    }));

const inPlace = (a: ReadRow, b: ReadRow): number =>
  a.place - b.place || (a.lines.address < b.lines.address ? -1 : 1);

/** The rows put into a version of which only the head counts. */
function putTogether(head: Protocol, read: readonly ReadRow[]): Protocol {
  return rowSorts.reduce((protocol, sort) => {
    const own = read.filter(({ lines }) => lines.sort === sort).toSorted(inPlace);
    return withRows(
      protocol,
      sort,
      own.flatMap(({ row }) => (row === null ? [] : [row])),
    );
  }, head);
}

/** What speaks against rows that can each be read, in the line of the figure that it is about. */
function senseErrors(protocol: Protocol, read: readonly ReadRow[]): readonly FileError[] {
  const byAddress = new Map<string, RowLines>();
  for (const sort of rowSorts) {
    const own = read.filter(({ lines, row }) => lines.sort === sort && row !== null).toSorted(inPlace);
    for (const [place, row] of standingRows(protocol, sort).entries()) {
      const lines = own[place]?.lines;
      if (lines !== undefined) byAddress.set(addressAt(sort, row, place), lines);
    }
  }
  return senseOf(protocol).map(({ address, refusal }) => {
    const lines = byAddress.get(address);
    return lines === undefined ? { line: null, row: address, refusal } : errorOf(lines, refusal);
  });
}

const byLine = (a: FileError, b: FileError): number =>
  (a.line ?? Number.POSITIVE_INFINITY) - (b.line ?? Number.POSITIVE_INFINITY);

const refusedFile = (errors: readonly FileError[]): FileReading => ({
  ok: false,
  errors: errors.toSorted(byLine),
});

/**
 * The table from the lines of its file, in any order, with the head (version, approval) of the one that is given; or everything that is to
 * mend, line by line, and nothing taken: a row or a figure that is not known, one that is missing or stands twice, a value that is not
 * understood, rows that speak against one another.
 */
export function readFileLines(lines: readonly TypedLine[], head: Protocol): FileReading {
  const gathered = gather(lines);
  const answers = gathered.rows.map(readLines);
  const errors = [
    ...gathered.errors,
    ...answers.flatMap((answer) => answer.errors),
    ...notSpokenOf(gathered.rows),
  ];
  if (errors.length > 0) return refusedFile(errors);
  const read = answers.flatMap((answer) => (answer.read === null ? [] : [answer.read]));
  const checked = protocolSchema.safeParse(putTogether(head, read));
  if (!checked.success)
    return refusedFile([{ line: null, row: null, refusal: { code: "entry-not-understood" } }]);
  const against = senseErrors(checked.data, read);
  return against.length > 0 ? refusedFile(against) : { ok: true, protocol: checked.data };
}
