import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";

/** One tube of a patient with an open record, as JSON; `beside` is null where an older release stored none. */
export type OpenPatientTube = {
  readonly patientId: string;
  readonly birthOn: Day | null;
  readonly beside: string | null;
  readonly state: string;
};

/**
 * Every tube of every patient with a record that has not ended, and that is of one of these kinds where kinds are asked for; the tubes of
 * one patient stand together. Read row by row: all of a clinic at once would be some hundred megabytes.
 */
export function* openPatientTubes(
  { sqlite }: Database,
  kinds: readonly TubeKind[] | null,
): Generator<OpenPatientTube> {
  const rows = sqlite.prepare<[{ kinds: string | null }], OpenPatientTube>(
    `select t.patient_id as patientId, p.birth_on as birthOn, s.state as beside, t.state as state
      from (select distinct patient_id from tubes
        where status <> 'ended' and (:kinds is null or kind in (select value from json_each(:kinds)))
        order by patient_id) as asked
      join patients p on p.id = asked.patient_id
      left join patient_states s on s.patient_id = asked.patient_id
      join tubes t on t.patient_id = asked.patient_id`,
  );
  yield* rows.iterate({ kinds: kinds === null ? null : JSON.stringify(kinds) });
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
