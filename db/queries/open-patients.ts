import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";

/** A patient with a record that has not ended; `state` is JSON, null where an older release stored none. */
export type OpenPatient = {
  readonly patientId: string;
  readonly birthOn: Day | null;
  readonly state: string | null;
};

/**
 * Every patient with a record that has not ended, and that is of one of these kinds where kinds are asked for. Read row by row: all of a
 * clinic at once would be some hundred megabytes.
 */
export function openPatients(
  { sqlite }: Database,
  kinds: readonly TubeKind[] | null,
): IterableIterator<OpenPatient> {
  const rows = sqlite.prepare<[{ kinds: string | null }], OpenPatient>(
    `select p.id as patientId, p.birth_on as birthOn, s.state as state
      from (select distinct patient_id from tubes
        where status <> 'ended' and (:kinds is null or kind in (select value from json_each(:kinds)))
        order by patient_id) as asked
      join patients p on p.id = asked.patient_id
      left join patient_states s on s.patient_id = asked.patient_id`,
  );
  return rows.iterate({ kinds: kinds === null ? null : JSON.stringify(kinds) });
}

type PinsRow = { readonly protocol: number; readonly calendar: number };

/** Which versions the open steps go by. */
export const versionsInUse = ({ sqlite }: Database): readonly PinsRow[] =>
  sqlite
    .prepare<[], PinsRow>(
      `select distinct pins_protocol as protocol, pins_calendar as calendar from open_steps
        where pins_protocol is not null and pins_calendar is not null`,
    )
    .all();
