import type { Database } from "#db/sqlite.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";

/** A patient with a record that has not ended; `state` is JSON, null where an older release stored none. */
export type OpenPatient = { readonly patientId: string; readonly state: string | null };

/** Whose dates can move, by the kinds that are asked for. */
const WHO = `select patient_id from tubes
  where status <> 'ended' and (:kinds is null or kind in (select value from json_each(:kinds)))`;

/** The plus has the table read from end to end: to look each of them up took about twice as long. */
const STORED = `select patient_id as patientId, state from patient_states where +patient_id in (${WHO})`;

const MISSING = `select distinct patient_id as patientId, null as state from tubes
  where patient_id in (${WHO}) and patient_id not in (select patient_id from patient_states)`;

/**
 * Every patient with a record that has not ended, and that is of one of these kinds where kinds are asked for. Read row by row, so that no
 * more than one patient stands in memory.
 */
export function* openPatients(
  { sqlite }: Database,
  kinds: readonly TubeKind[] | null,
): Generator<OpenPatient> {
  const asked = { kinds: kinds === null ? null : JSON.stringify(kinds) };
  for (const query of [STORED, MISSING])
    yield* sqlite.prepare<[typeof asked], OpenPatient>(query).iterate(asked);
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
