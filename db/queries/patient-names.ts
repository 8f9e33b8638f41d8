import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";

/** A patient as lists name them: both identifiers beside the name. */
export type PatientName = {
  readonly id: string;
  readonly familyName: string;
  readonly givenName: string;
  readonly number: string | null;
  readonly birthOn: Day | null;
};

/** These patients, in any order. */
export const patientsNamed = ({ sqlite }: Database, ids: readonly string[]): readonly PatientName[] =>
  sqlite
    .prepare<[string], PatientName>(
      `select patients.id, family_name as familyName, given_name as givenName, value as number, birth_on as birthOn
        from patients
        left join patient_identifiers on patient_identifiers.patient_id = patients.id and place = 1
        where patients.id in (select value from json_each(?))`,
    )
    .all(JSON.stringify(ids));
