import { everyPatient, identifierByNumber, patientById } from "#db/queries/patients.ts";
import { projectionOf } from "#db/queries/projections.ts";
import { rowStands } from "#db/queries/sheets.ts";
import type { Database } from "#db/sqlite.ts";
import { inputHash } from "#server/input-hash.ts";
import { nameKey } from "#shared/sheet/names-alike.ts";
import type { ReadRow } from "#shared/sheet/read-row.ts";
import type { Here, HerePatient, PatientNumber } from "#shared/sheet/stand.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** What stands for a row in the record of what was brought in. */
export const digestOf = (mark: string): string => inputHash(mark);

/** A patient with the tubes that have not ended; one whose record was joined with another is found there. */
function herePatient(db: Database, patientId: string): HerePatient | undefined {
  const row = patientById(db, patientId);
  if (row === undefined) return undefined;
  if (row.joinedInto !== null) return herePatient(db, row.joinedInto);
  const { id, familyName, givenName, birthOn } = row;
  const tubes = projectionOf(db, id)
    .tubes.filter(({ status }) => status !== "ended")
    .map(({ state }) => state as TubeState);
  return { id, familyName, givenName, birthOn, tubes };
}

type Person = Pick<ReadRow["details"], "familyName" | "givenName" | "birthOn">;

const personKey = (person: Person): string => `${person.birthOn} ${nameKey(person)}`;

/** Everybody whose birth date is known, by name and birth date. */
function everybody(db: Database): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const patient of everyPatient(db)) {
    if (patient.birthOn === null || patient.withdrawnAt !== null) continue;
    const key = personKey(patient);
    found.set(key, [...(found.get(key) ?? []), patient.joinedInto ?? patient.id]);
  }
  return found;
}

/** What stands here, for a list that is read now. Each record is looked up once. */
export function hereOf(db: Database): Here {
  const patients = new Map<string, HerePatient | undefined>();
  const patientOf = (id: string): HerePatient | undefined => {
    if (!patients.has(id)) patients.set(id, herePatient(db, id));
    return patients.get(id);
  };
  let byKey: ReturnType<typeof everybody> | undefined;
  const alike = (person: Person): readonly string[] => {
    byKey ??= everybody(db);
    return byKey.get(personKey(person)) ?? [];
  };
  return {
    byNumber: (number: PatientNumber) => {
      const owner = identifierByNumber(db, number)?.patientId;
      return owner === undefined ? undefined : patientOf(owner);
    },
    alike: (details) => (details.birthOn === null ? [] : alike(details).flatMap((id) => patientOf(id) ?? [])),
    wasBroughtIn: (mark) => rowStands(db, digestOf(mark)),
  };
}
