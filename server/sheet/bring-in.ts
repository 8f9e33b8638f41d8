import { addSheetBatch, addSheetRow, rememberColumn } from "#db/queries/sheets.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import { inAct } from "#server/act.ts";
import { machineNow, today } from "#server/clock.ts";
import { newId } from "#server/ids.ts";
import { openPatientRecord } from "#server/patients/register-patient.ts";
import { append, type Recording } from "#server/record/append.ts";
import { loadRecord } from "#server/record/load-record.ts";
import type { Doing } from "#server/record/record-event.ts";
import { digestOf, hereOf } from "#server/sheet/here.ts";
import { type KeptSheet, loadSheet } from "#server/sheet/load-sheet.ts";
import { sheetReading, standSheet } from "#server/sheet/stand-sheet.ts";
import type { Telling } from "#server/sheet/telling.ts";
import { onDay } from "#shared/day/when.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { heading } from "#shared/sheet/heading.ts";
import type { Here, Standing } from "#shared/sheet/stand.ts";
import type { Command } from "#shared/tube/decide.ts";
import { fold } from "#shared/tube/fold.ts";

export type BringingIn = { readonly actId: string; readonly sheetId: string };

export type BroughtIn = {
  readonly actId: string;
  readonly tubes: number;
  readonly patients: number;
  readonly setAside: number;
};

type Coming = Extract<Standing, { stands: "comes in" }>;

const isComing = (standing: Standing): standing is Coming => standing.stands === "comes in";

/** Everything that a row rests on may have changed since it was read; nothing is brought in then. */
function refuseIfChanged(here: Here, rows: readonly Coming[]): void {
  for (const { read, here: seen, mark } of rows) {
    const [number] = read.details.identifiers;
    const now = number && here.byNumber(number);
    const isSame =
      now?.id === seen?.id &&
      now?.tubes.map(({ id }) => id).join() === seen?.tubes.map(({ id }) => id).join();
    if (!isSame || here.wasBroughtIn(mark))
      throw new DomainError({
        code: "changed-meanwhile",
        args: { entries: "a record that the list speaks of" },
      });
  }
}

const written = { daySequence: 0, amends: null, lastSeen: Number.MAX_SAFE_INTEGER } as const;

function opening({ read }: Coming, { tubeId, number }: { tubeId: string; number: number }): Command {
  const { kind, when, time, payload } = read.tube;
  const given = { ...payload, number };
  return { ...written, eventId: newId(), kind, tubes: [tubeId], when, time, payload: given };
}

const alikeSays = ({ row, alikeRows }: Coming): string =>
  alikeRows.length === 0
    ? `Row ${row} of a list brought in has the name and birth date of another record here, under another number.`
    : `Rows ${[...alikeRows, row].join(" and ")} of a list brought in have one name and birth date, under two numbers.`;

/** One person under two numbers is for somebody to find out: the record says so until they have. */
const reconcile = (coming: Coming, tx: Tx): Command => ({
  ...written,
  eventId: newId(),
  kind: "reconcile asked",
  tubes: [],
  when: onDay(today(tx)),
  time: null,
  payload: { about: "two records of one patient", says: alikeSays(coming) },
});

/** All rows of one patient: the record opened if there is none, the tubes taken over, and a doubt about who it is asked. */
function bringPatient(tx: Tx, rows: readonly Coming[], by: Omit<Recording, "patientId">): void {
  const [first] = rows;
  if (first === undefined) return;
  const patientId = first.here?.id ?? openPatientRecord(tx, first.read.details, by);
  const tubes = first.here === null ? [] : fold(loadRecord(tx, patientId).events).tubes;
  const given = Math.max(0, ...tubes.map(({ number }) => number));
  const numbered = rows.map((row, index) => ({ row, tubeId: newId(), number: given + 1 + index }));
  const doubted = rows.find(({ alikeRows, alikeHere }) => alikeRows.length > 0 || alikeHere);
  const commands = numbered.map(({ row, ...tube }) => opening(row, tube));
  append(tx, { patientId, ...by }, doubted === undefined ? commands : [...commands, reconcile(doubted, tx)]);
  for (const { row: coming, tubeId } of numbered) {
    const { row, mark, typed } = coming;
    addSheetRow(tx, { actId: by.actId, row, digest: digestOf(mark), patientId, tubeId, typed });
  }
}

const keyOf = ({ here, read }: Coming): string => here?.id ?? JSON.stringify(read.details.identifiers[0]);

const byPatient = (rows: readonly Coming[]): readonly (readonly Coming[])[] => {
  const groups = new Map<string, Coming[]>();
  for (const row of rows) groups.set(keyOf(row), [...(groups.get(keyOf(row)) ?? []), row]);
  return [...groups.values()];
};

function rememberColumns(tx: Tx, { sheet, answers }: KeptSheet, at: Recording["at"]): void {
  for (const [index, title] of sheet.headings.entries()) {
    const field = answers.columns[index];
    const compared = heading(title);
    if (field !== undefined && compared !== "")
      rememberColumn(tx, { heading: compared, field, updatedAt: at });
  }
}

/** How much longer a row takes to write than to read: 0.6 to 1.9 measured, of 500 to 5,000 rows on a machine with other work. */
const WRITES_AS_LONG_AS = 1.5;

/** The rows as they stand by now, and from the time that this took about how long they take to write. */
async function readAgain(db: Database, kept: KeptSheet, telling: Telling) {
  const began = machineNow();
  const found = await standSheet(db, kept, telling.read);
  const perRowMs = (machineNow() - began) / Math.max(1, found.length);
  const writesForMs = found.filter(isComing).length * perRowMs * WRITES_AS_LONG_AS;
  return { found, writesForS: Math.ceil(writesForMs / 1000) };
}

const SILENT: Telling = { read: () => {}, writing: () => {} };

/**
 * Brings in every row of a list that can be, all of them in one act or none. Rows that are set aside stay with the list. Refuses what
 * has not been answered, a list without a row that comes in (`nothing-to-bring-in`), and a record that changed since it was read
 * (`changed-meanwhile`).
 */
export async function bringIn(
  { db, staff }: Doing,
  input: BringingIn,
  telling: Telling = SILENT,
): Promise<BroughtIn> {
  const { actId, sheetId } = input;
  const kept = loadSheet(db, sheetId);
  const { refusals } = sheetReading(db, kept);
  if (refusals.length > 0) throw new DomainError(refusals);
  const { found, writesForS } = await readAgain(db, kept, telling);
  await telling.writing(writesForS);
  return inAct({ db, staff, actId, command: "list: bring in", input }, (tx, at) => {
    const rows = found.filter(isComing);
    if (rows.length === 0) throw new DomainError({ code: "nothing-to-bring-in" });
    refuseIfChanged(hereOf(tx), rows);
    const patients = byPatient(rows);
    for (const own of patients) bringPatient(tx, own, { actId, staffId: staff.id, at });
    addSheetBatch(tx, { actId, fileName: kept.fileName, rowsInSheet: kept.sheet.rows.length });
    rememberColumns(tx, kept, at);
    const setAside = found.filter(({ stands }) => stands === "set aside").length;
    return { actId, tubes: rows.length, patients: patients.length, setAside };
  });
}
