import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { basename, extname } from "node:path";
import { claimFile } from "#db/claim-file.ts";
import { openDatabase } from "#db/connection.ts";
import { clinicIfAny } from "#db/queries/clinic.ts";
import type { StaffRow } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { ask } from "#server/commands/ask.ts";
import { listAnswers } from "#server/commands/list-answers.ts";
import type { ListOptions } from "#server/commands/list-options.ts";
import { askedLine, counted, matchingLines, ofKind, standingLines } from "#server/commands/list-report.ts";
import { isMissing } from "#server/export/is-missing.ts";
import { newId } from "#server/ids.ts";
import { answerSheet } from "#server/sheet/answer-sheet.ts";
import { bringIn } from "#server/sheet/bring-in.ts";
import { dropSheet } from "#server/sheet/drop-sheet.ts";
import { keepSheet, suggestAnswers } from "#server/sheet/keep-sheet.ts";
import type { KeptSheet } from "#server/sheet/load-sheet.ts";
import { readSheet } from "#server/sheet/read-sheet.ts";
import { setAsideFile, setAsideRows } from "#server/sheet/set-aside.ts";
import { sheetReading, standSheet } from "#server/sheet/stand-sheet.ts";
import { accountNamed } from "#server/staff/set-password.ts";
import { may } from "#shared/access/may.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { SAID_FROM_S, writingSentence } from "#shared/sheet/progress.ts";
import type { Standing } from "#shared/sheet/stand.ts";

export type BringingList = {
  readonly database: string;
  readonly file: string;
  readonly options: ListOptions;
};

/** A list that takes a while says how far it is, on the side of what a script reads. */
const TOLD_EVERY = 500;

const telling = (doing: string, rows: number) => (done: number) => {
  if (done % TOLD_EVERY === 0)
    console.error(`${doing}: ${done.toLocaleString("en-US")} of ${counted(rows, "row")}`);
};

/** Nothing can be said while all rows are written in one act, so what takes a while is said before. */
function sayWriting(seconds: number): void {
  if (seconds >= SAID_FROM_S) console.error(writingSentence(seconds));
}

function whoBrings(db: Database, by: string | null): StaffRow {
  if (by === null)
    throw new DomainError({
      code: "text-missing",
      args: { what: "who brings the list in, as --by USER-NAME" },
    });
  const staff = accountNamed(db, by.trim().toLowerCase());
  if (!may(staff, "sheet.bringIn")) throw new DomainError({ code: "not-allowed" });
  return staff;
}

const asideFileOf = (file: string): string =>
  `${file.slice(0, file.length - extname(file).length)}.set-aside.csv`;

/** Writes the rows that are set aside beside the list, for their owner alone; null where there is none. */
function writeAside(file: string, kept: KeptSheet, found: readonly Standing[]): string | null {
  const aside = ofKind(found, "set aside");
  if (aside.length === 0) return null;
  const beside = asideFileOf(file);
  if (!claimFile(beside)) throw new DomainError({ code: "backup-exists", args: { file: beside } });
  writeFileSync(beside, setAsideFile({ headings: kept.sheet.headings, rows: setAsideRows(kept, aside) }));
  return beside;
}

const isYes = (typed: string): boolean => /^y(?:es)?$/i.test(typed.trim());

async function isAgreed(tubes: number, { yes }: ListOptions): Promise<boolean> {
  if (yes) return true;
  const what = `Bring in ${counted(tubes, "tube")}`;
  if (process.stdin.isTTY) return isYes(await ask({ what: `${what}? yes or no` }));
  console.log(`Nothing is written. ${what} with --yes`);
  return false;
}

/** A list as it was shown: nothing of it is written yet. */
type Shown = {
  readonly db: Database;
  readonly staff: StaffRow;
  readonly bytes: Buffer;
  readonly kept: KeptSheet;
  readonly found: readonly Standing[];
};

/** Brings in what was shown, in one act; the file of rows set aside is gone again when that is refused. */
async function bringShown({ db, staff, bytes, kept, found }: Shown, { file, options }: BringingList) {
  const beside = writeAside(file, kept, found);
  let isDone = false;
  try {
    const brought = { fileName: kept.fileName, bytes, encoding: options.encoding };
    const { sheetId } = keepSheet({ db, staff }, brought);
    answerSheet({ db, staff }, { sheetId, answers: kept.answers });
    const told = { read: telling("Read again", found.length), writing: sayWriting };
    const { tubes, patients } = await bringIn({ db, staff }, { actId: newId(), sheetId }, told);
    dropSheet(db, sheetId);
    isDone = true;
    console.log(`${counted(tubes, "tube")} of ${counted(patients, "patient")} brought in.`);
    if (beside !== null) console.log(`The rows set aside, each with its reason: ${beside}`);
  } finally {
    if (beside !== null && !isDone) rmSync(beside, { force: true });
  }
}

/** Reads the list by what was answered and says how it is matched. Throws what has to be answered first, each with its flag. */
function matched(db: Database, bytes: Buffer, { file, options }: BringingList): KeptSheet {
  const sheet = readSheet(bytes, options.encoding);
  const answers = listAnswers(sheet, suggestAnswers(db, sheet), options);
  const kept = { id: "", fileName: basename(file), sheet, answers };
  for (const line of matchingLines(kept)) console.log(line);
  return kept;
}

function isAnswered(db: Database, kept: KeptSheet): boolean {
  const { refusals } = sheetReading(db, kept);
  for (const refusal of refusals) console.error(askedLine(refusal));
  return refusals.length === 0;
}

function bytesOf(file: string): Buffer {
  try {
    return readFileSync(file);
  } catch (error) {
    throw isMissing(error) ? new DomainError({ code: "file-missing", args: { file } }) : error;
  }
}

/** The list as it would stand, and what is agreed to of it. False where something is left to answer or to agree to. */
async function bringInto(db: Database, bringing: BringingList): Promise<boolean> {
  const { database, file, options } = bringing;
  if (clinicIfAny(db) === undefined)
    throw new DomainError({ code: "clinic-missing", args: { file: database } });
  const staff = whoBrings(db, options.by);
  const bytes = bytesOf(file);
  const kept = matched(db, bytes, bringing);
  if (!isAnswered(db, kept)) return false;
  const found = await standSheet(db, kept, telling("Read", kept.sheet.rows.length));
  for (const line of standingLines(kept, found)) console.log(line);
  const tubes = ofKind(found, "comes in").length;
  if (tubes === 0) {
    console.log("There is nothing to bring in.");
    return ofKind(found, "set aside").length === 0;
  }
  if (!(await isAgreed(tubes, options))) return false;
  await bringShown({ db, staff, bytes, kept, found }, bringing);
  return true;
}

/**
 * A clinic's own list into its database: tells how the columns are matched and how each row would stand, and brings in what is agreed
 * to. False where nothing was brought in and something is left to do. Throws what `readSheet`, `listAnswers` and `bringIn` throw.
 */
export async function bringList(bringing: BringingList): Promise<boolean> {
  const db = openDatabase(bringing.database);
  try {
    return await bringInto(db, bringing);
  } finally {
    db.sqlite.close();
  }
}
