import { tubeById } from "#db/queries/projections.ts";
import { logOfTube, readingById } from "#db/queries/readings.ts";
import type { Tx } from "#db/transaction.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { logReadings } from "#server/output/log-readings.ts";
import { readingContext } from "#server/output/reading-context.ts";
import { entriesOf } from "#server/output/standing-readings.ts";
import { readingRow, voidingRow } from "#server/output/stored-reading.ts";
import type { Doing } from "#server/record/record-event.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Reading } from "#shared/output/reading.ts";
import type { ReadingEntry } from "#shared/output/reading-log.ts";
import type { AboutTube, CorrectingReading } from "#shared/record/act.ts";
import { voidForm } from "#shared/record/amend/void-form.ts";
import { readReading } from "#shared/record/output/read-reading.ts";
import { type ReadingDoubt, readingDoubts } from "#shared/record/output/reading-doubts.ts";

/** `asked`: what may be a slip in it. It is logged as it was typed. */
export type RecordedReading = {
  readonly actId: string;
  readonly readingId: string;
  readonly asked: readonly ReadingDoubt[];
};

type Typed = {
  readonly reading: Reading;
  readonly asked: readonly ReadingDoubt[];
  /** The tube's log as it stands before it. */
  readonly entries: readonly ReadingEntry[];
};
type Typing = AboutTube & { readonly corrects?: string };

/** The reading as it is logged, and what is asked of it. Throws every field to mend. */
function typedReading(tx: Tx, at: Instant, { texts, ...of }: Typing): Typed {
  const { context, entries } = readingContext(tx, at, of);
  const read = readReading(texts, context);
  if (!read.ok) throw new DomainError(read.refusals);
  const asked = readingDoubts({ ...read.entry, drained: { volume: read.entry.gross } }, context);
  return { reading: { id: newId(), tubeId: of.tubeId, ...read.entry }, asked, entries };
}

/** Adds a reading to a tube's log. Adding conflicts with nothing. */
export function recordReading({ db, staff }: Doing, input: AboutTube): RecordedReading {
  const { actId, patientId } = input;
  return inAct({ db, staff, actId, command: "reading: record", input }, (tx, at) => {
    const { reading, asked, entries } = typedReading(tx, at, input);
    const by = { patientId, actId, recordedAt: at, recordedBy: staff.id };
    logReadings(tx, [readingRow(reading, by)], { ...by, tubeId: reading.tubeId, entries });
    return { actId, readingId: reading.id, asked };
  });
}

/** Puts another reading in the place of one; the log keeps both and the reason. */
export function correctReading({ db, staff }: Doing, input: CorrectingReading): RecordedReading {
  const { actId, patientId, readingId } = input;
  return inAct({ db, staff, actId, command: "reading: correct", input }, (tx, at) => {
    const { tubeId } = readingOf(tx, readingId, patientId);
    const { reading, asked, entries } = typedReading(tx, at, { ...input, tubeId, corrects: readingId });
    const by = { patientId, actId, recordedAt: at, recordedBy: staff.id };
    const row = readingRow(reading, by, { replaces: readingId, reason: reasonIn(input) });
    logReadings(tx, [row], { ...by, tubeId, entries });
    return { actId, readingId: reading.id, asked };
  });
}

/** Takes a reading out of what counts; the log keeps it and the reason. */
export function voidReading({ db, staff }: Doing, input: CorrectingReading): Omit<RecordedReading, "asked"> {
  const { actId, patientId, readingId } = input;
  return inAct({ db, staff, actId, command: "reading: void", input }, (tx, at) => {
    const row = readingOf(tx, readingId, patientId);
    const by = { patientId, actId, recordedAt: at, recordedBy: staff.id, reason: reasonIn(input) };
    const { tubeId } = row;
    const entries = entriesOf(logOfTube(tx, tubeId));
    logReadings(tx, [voidingRow(newId(), row, by)], { ...by, tubeId, entries });
    return { actId, readingId };
  });
}

function readingOf(tx: Tx, readingId: string, patientId: string) {
  const row = readingById(tx, readingId);
  // It may have been written down in a record that was joined into this patient's since: its tube says whose it is.
  const whose = row === undefined ? undefined : (tubeById(tx, row.tubeId)?.patientId ?? row.patientId);
  if (row === undefined || whose !== patientId) throw new DomainError({ code: "entry-unknown" });
  return row;
}

function reasonIn({ texts }: CorrectingReading): string {
  const read = voidForm.read(texts);
  if (!read.ok) throw new DomainError(read.refusals);
  return read.entry.reason;
}
