import { isRecordedInOtherActs } from "#db/queries/events.ts";
import { hasReadings } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { clinicNow, decideEach } from "#server/record/decide-each.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { voidingsOfAct } from "#server/record/voidings-of-act.ts";
import type { Refusal } from "#shared/errors/refusal.ts";

/** A record that keeps an act from being taken back, and why. */
export type Resting = {
  readonly patientId: string;
  readonly familyName: string;
  readonly givenName: string;
  readonly refusals: readonly Refusal[];
};

/** The records in which taking an act back would be refused, as `undoAct` would refuse it now; of none that holds nothing else. */
export function restsOnAct(db: Database, actId: string): readonly Resting[] {
  const moment = clinicNow(db, now(db));
  return [...voidingsOfAct(db, actId)]
    .filter(([patientId]) => isRecordedInOtherActs(db, { patientId, actId }) || hasReadings(db, patientId))
    .flatMap(([patientId, commands]) => {
      const record = loadRecord(db, patientId);
      const { familyName, givenName } = record.patient;
      const decided = decideEach(db, record, { commands, now: moment });
      return decided.ok ? [] : [{ patientId, familyName, givenName, refusals: decided.refusals }];
    });
}
