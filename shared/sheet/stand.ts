import type { Day } from "#shared/day/day.ts";
import { birthField } from "#shared/record/field/birth-field.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { FormContext, NumberedTube } from "#shared/record/form.ts";
import { nameKey } from "#shared/sheet/names-alike.ts";
import { isNoTube } from "#shared/sheet/no-tube.ts";
import { markOf, type ReadRow, readRow } from "#shared/sheet/read-row.ts";
import { type Reading, type RowRefusal, type RowTexts, rowTexts } from "#shared/sheet/row-texts.ts";
import type { SheetLine } from "#shared/sheet/sheet.ts";
import { known } from "#shared/tube/certainty.ts";
import { tubeTitle } from "#shared/tube/name.ts";

/** A record number with whoever issued it. */
export type PatientNumber = { readonly issuer: string; readonly value: string };

/** A patient whose record stands here already. */
export type HerePatient = {
  readonly id: string;
  readonly familyName: string;
  readonly givenName: string;
  readonly birthOn: Day | null;
  readonly tubes: readonly NumberedTube[];
};

/** What stands here, as far as a list brought in has to know. */
export type Here = {
  readonly byNumber: (number: PatientNumber) => HerePatient | undefined;
  /** Others of the same name and birth date; none where no birth date is known. */
  readonly alike: (details: ReadRow["details"]) => readonly HerePatient[];
  /** Whether a row of this mark was brought in and its tube still stands. */
  readonly wasBroughtIn: (mark: string) => boolean;
};

/** How one row will stand. */
export type Standing = { readonly row: number } & (
  | {
      readonly stands: "comes in";
      readonly read: ReadRow;
      readonly mark: string;
      /** What was typed into the tube's form. */
      readonly typed: Texts;
      /** The record that it comes to, when there is one. */
      readonly here: HerePatient | null;
      /** Rows above with other tubes of this patient. */
      readonly besideRows: readonly number[];
      /** Rows above with the same name and birth date under another number, and whether such a record is here. */
      readonly alikeRows: readonly number[];
      readonly alikeHere: boolean;
    }
  | { readonly stands: "here already" }
  | { readonly stands: "said above"; readonly above: number }
  /** A total, a page number: left out, and said. */
  | { readonly stands: "no tube" }
  | { readonly stands: "set aside"; readonly refusals: readonly RowRefusal[] }
);

type Typed = { readonly line: SheetLine; readonly texts: RowTexts; readonly refusals: readonly RowRefusal[] };

const numberKey = ({ number = "", issuer = "" }: Texts): string => `${issuer.toLowerCase()} ${number}`;

const isBlank = (text: string | undefined): boolean => text === undefined || text === "" || text === "?";

/** What several rows of one patient say together: the first that says something counts. */
function together(rows: readonly Typed[]): Texts {
  const [first] = rows;
  const names = Object.keys(first?.texts.patient ?? {});
  return Object.fromEntries(
    names.map((name) => {
      const said = rows.map(({ texts }) => texts.patient[name]).find((text) => !isBlank(text));
      return [name, said ?? first?.texts.patient[name] ?? ""];
    }),
  );
}

const differ = (texts: readonly (string | undefined)[]): boolean =>
  new Set(texts.filter((text) => !isBlank(text))).size > 1;

const nameIn = ({ familyName = "", givenName = "" }: Texts): string =>
  familyName === "" || givenName === "" ? "" : nameKey({ familyName, givenName });

/** A birth date in whatever way it is typed; as typed where it is none. */
function birthIn({ birthOn = "" }: Texts, context: FormContext): string {
  const read = birthField({ label: "" }, context).read(birthOn);
  return read.ok ? (read.value ?? "") : birthOn;
}

/** One number with two names or two birth dates: whose it is, nobody here can tell. */
const isShared = (rows: readonly Typed[], context: FormContext): boolean =>
  differ(rows.map(({ texts }) => nameIn(texts.patient))) ||
  differ(rows.map(({ texts }) => birthIn(texts.patient, context)));

const isAnother = (here: HerePatient, { details }: ReadRow): boolean =>
  nameKey(here) !== nameKey(details) ||
  (here.birthOn !== null && details.birthOn !== null && here.birthOn !== details.birthOn);

/** A side that nobody knows may be this one: such a tube is no other until somebody has looked. */
function maySameTube(here: NumberedTube, { payload }: ReadRow["tube"]): boolean {
  const [stands, says] = [known(here.side), known(payload.side)];
  return here.kind === payload.kind && (stands === undefined || says === undefined || stands === says);
}

function groupsOf(rows: readonly Typed[]): ReadonlyMap<string, readonly Typed[]> {
  const groups = new Map<string, Typed[]>();
  for (const row of rows) {
    const key = row.texts.patient.number === "" ? `row ${row.line.row}` : numberKey(row.texts.patient);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return groups;
}

const aside = (row: number, ...refusals: readonly RowRefusal[]): Standing => ({
  row,
  stands: "set aside",
  refusals,
});

/** What has been seen further up, so that no row counts twice. */
type Above = {
  readonly marks: Map<string, number>;
  /** Whose each number is, by the first number of its patient, and the rows of each patient. */
  readonly numbers: Map<string, string>;
  readonly patients: Map<string, number[]>;
  readonly alike: Map<string, number[]>;
};

type Beside = { readonly here: Here; readonly above: Above };

const keyOf = ({ issuer, value }: PatientNumber): string => `${issuer.toLowerCase()} ${value}`;

/** A number of this row that is somebody else's, in the list or here; null when each is this patient's or nobody's. */
function foreignNumber(read: ReadRow, key: string, { here, above }: Beside): RowRefusal | null {
  const [first, second] = read.details.identifiers;
  const patient = first && here.byNumber(first);
  const isOther = (number: PatientNumber): boolean => (above.numbers.get(keyOf(number)) ?? key) !== key;
  const shared = [first, second].find((number) => number !== undefined && isOther(number));
  if (shared !== undefined) {
    const rows = above.patients.get(above.numbers.get(keyOf(shared)) ?? "") ?? [];
    const field = shared === first ? "number" : "secondNumber";
    return { field, refusal: { code: "number-shared", args: { rows: rows.join(", ") } } };
  }
  if (patient !== undefined && isAnother(patient, read))
    return { field: "number", refusal: { code: "number-of-another" } };
  const other = second && here.byNumber(second);
  return other !== undefined && other.id !== patient?.id
    ? { field: "secondNumber", refusal: { code: "number-of-another" } }
    : null;
}

const title = (tube: NumberedTube): string => tubeTitle(tube).toLowerCase();

/** A row that can be read, beside what stands above it and here. */
function standOf({ line, texts }: Typed, read: ReadRow, beside: Beside): Standing {
  const { here, above } = beside;
  const { row } = line;
  const mark = markOf(read);
  const said = above.marks.get(mark);
  if (said !== undefined) return { row, stands: "said above", above: said };
  above.marks.set(mark, row);
  if (here.wasBroughtIn(mark)) return { row, stands: "here already" };
  const key = numberKey(texts.patient);
  const foreign = foreignNumber(read, key, beside);
  if (foreign !== null) return aside(row, foreign);
  const [number] = read.details.identifiers;
  const patient = number && here.byNumber(number);
  const tube = patient?.tubes.find((standing) => maySameTube(standing, read.tube));
  if (tube !== undefined)
    return aside(row, { field: "kind", refusal: { code: "tube-here-already", args: { tube: title(tube) } } });
  return {
    row,
    stands: "comes in",
    read,
    mark,
    typed: texts.tube,
    here: patient ?? null,
    ...countIn(row, { key, read }, beside),
  };
}

/** Notes the row among those above, and says which of them speak of this patient or of one alike. */
function countIn(row: number, { key, read }: { key: string; read: ReadRow }, { here, above }: Beside) {
  const { details } = read;
  const person = `${nameKey(details)} ${details.birthOn ?? key}`;
  const besideRows = above.patients.get(key) ?? [];
  const alike = above.alike.get(person) ?? [];
  for (const number of details.identifiers) above.numbers.set(keyOf(number), key);
  above.patients.set(key, [...besideRows, row]);
  above.alike.set(person, [...alike, row]);
  const [first] = details.identifiers;
  const own = first && here.byNumber(first)?.id;
  return {
    besideRows,
    alikeRows: alike.filter((other) => !besideRows.includes(other)),
    alikeHere: here.alike(details).some(({ id }) => id !== own),
  };
}

/** What rows are read beside, and how far the reading has come. */
export type StandBeside = {
  readonly reading: Reading;
  readonly context: FormContext;
  readonly here: Here;
};

/**
 * How each row of a list will stand: brought in, here already, said by a row above, no tube at all, or set aside with every reason. Rows
 * of one number are one patient. A generator, so that whoever waits can be told how far it is: it yields one row at a time, in the list's order.
 */
export function* standings(lines: readonly SheetLine[], beside: StandBeside): Generator<Standing> {
  const { reading, context, here } = beside;
  const typed = lines.map((line): Typed => ({ line, ...rowTexts(reading, line) }));
  const groups = groupsOf(typed);
  const groupOf = new Map(
    [...groups.values()].flatMap((rows) => rows.map((row) => [row.line.row, rows] as const)),
  );
  const above: Above = { marks: new Map(), numbers: new Map(), patients: new Map(), alike: new Map() };
  const patients = new Map([...groups.values()].map((rows) => [rows, together(rows)] as const));
  const shared = new Set([...groups.values()].filter((rows) => isShared(rows, context)));
  for (const row of typed) {
    if (isNoTube(row.line, reading.answers)) {
      yield { row: row.line.row, stands: "no tube" };
      continue;
    }
    const rows = groupOf.get(row.line.row) ?? [row];
    if (shared.has(rows)) {
      const args = { rows: rows.map(({ line }) => line.row).join(", ") };
      yield aside(row.line.row, ...row.refusals, {
        field: "number",
        refusal: { code: "number-shared", args },
      });
      continue;
    }
    const texts = { patient: patients.get(rows) ?? row.texts.patient, tube: row.texts.tube };
    const read = readRow(texts, { context, columns: reading.answers.columns, refused: row.refusals });
    yield read.ok ? standOf(row, read.row, { here, above }) : aside(row.line.row, ...read.refusals);
  }
}
