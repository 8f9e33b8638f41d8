import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { logReadings } from "#server/output/log-readings.ts";
import { readingRow } from "#server/output/stored-reading.ts";
import { formContext } from "#server/record/form-context.ts";
import type { Doing } from "#server/record/record-event.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { AboutTube } from "#shared/record/act.ts";
import { readWholeDiary } from "#shared/record/output/read-reading.ts";

export type RecordedDiary = { readonly actId: string; readonly readingIds: readonly string[] };

/** Adds every row of a diary to a tube's log as one act, or throws every cell to mend and adds none. */
export function recordDiary({ db, staff }: Doing, input: AboutTube): RecordedDiary {
  const { actId, patientId, tubeId, texts } = input;
  return inAct({ db, staff, actId, command: "diary: record", input }, (tx, at) => {
    const read = readWholeDiary(texts, formContext(tx, at, { patientId, tubeId }));
    if (!read.ok) throw new DomainError(read.refusals);
    const by = { patientId, actId, recordedAt: at, recordedBy: staff.id };
    const readings = read.entry.map((entry) => ({ id: newId(), tubeId, ...entry }));
    const rows = readings.map((reading) => readingRow(reading, by));
    logReadings(tx, rows, by);
    return { actId, readingIds: readings.map(({ id }) => id) };
  });
}
