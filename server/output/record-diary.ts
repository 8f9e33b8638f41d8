import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { logReadings } from "#server/output/log-readings.ts";
import { readingContext } from "#server/output/reading-context.ts";
import { readingRow } from "#server/output/stored-reading.ts";
import type { Doing } from "#server/record/record-event.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { AboutTube } from "#shared/record/act.ts";
import { type DiaryDoubts, diaryDoubts } from "#shared/record/output/diary-doubts.ts";
import { readWholeDiary } from "#shared/record/output/read-reading.ts";

/** `asked`: what may be a slip, by the name of its cell. It is logged as it was typed. */
export type RecordedDiary = {
  readonly actId: string;
  readonly readingIds: readonly string[];
  readonly asked: DiaryDoubts;
};

/** Adds every row of a diary to a tube's log as one act, or throws every cell to mend and adds none. */
export function recordDiary({ db, staff }: Doing, input: AboutTube): RecordedDiary {
  const { actId, patientId, tubeId, texts } = input;
  return inAct({ db, staff, actId, command: "diary: record", input }, (tx, at) => {
    const { context, entries } = readingContext(tx, at, { patientId, tubeId });
    const read = readWholeDiary(texts, context);
    if (!read.ok) throw new DomainError(read.refusals);
    const by = { patientId, actId, recordedAt: at, recordedBy: staff.id };
    const readings = read.entry.map((entry) => ({ id: newId(), tubeId, ...entry }));
    const asked = diaryDoubts(texts, context);
    const rows = readings.map((reading) => readingRow(reading, by));
    logReadings(tx, rows, { ...by, tubeId, entries });
    return { actId, readingIds: readings.map(({ id }) => id), asked };
  });
}
