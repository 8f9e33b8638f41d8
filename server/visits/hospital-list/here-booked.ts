import { everyIdentifier, everyPatient, identifiersOf } from "#db/queries/patients.ts";
import { projectionOf } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";
import { searchWord } from "#shared/record/patient/search-text.ts";
import { known } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { HereBooked, HerePatient, HereTube } from "#shared/visit/hospital-list/whom.ts";

type Person = ReturnType<typeof everyPatient>[number];

function herePatient(db: Database, { id, familyName, givenName, birthOn }: Person): HerePatient {
  const { tubes, visits } = projectionOf(db, id);
  return {
    id,
    familyName,
    givenName,
    birthOn,
    number: identifiersOf(db, id)[0]?.value ?? null,
    tubes: tubes
      .filter(({ status }) => status !== "ended")
      .map(({ name, state }): HereTube => {
        const { id: tubeId, number, kind, side } = state as TubeState;
        return { id: tubeId, number, name, kind: kindOf(kind).name, side: known(side) ?? null };
      })
      .toSorted((a, b) => a.number - b.number),
    visits: visits.map(({ visit }) => visit),
  };
}

function grouped<T>(rows: readonly T[], keyOf: (row: T) => string | null): ReadonlyMap<string, readonly T[]> {
  const found = new Map<string, T[]>();
  for (const row of rows) {
    const key = keyOf(row);
    if (key !== null) found.set(key, [...(found.get(key) ?? []), row]);
  }
  return found;
}

/** Who is here, for a list of bookings that is read now: by number, whoever issued it, and by birth date. Each record is looked up once. */
export function hereBooked(db: Database): HereBooked {
  const everyone = everyPatient(db).filter(({ withdrawnAt }) => withdrawnAt === null);
  const byId = new Map(everyone.map((person) => [person.id, person]));
  const numbers = grouped(everyIdentifier(db), ({ value }) => searchWord(value));
  const births = grouped(everyone, ({ birthOn }) => birthOn);
  const looked = new Map<string, HerePatient>();
  const patientsOf = (ids: readonly string[]): readonly HerePatient[] => {
    // One whose record was joined with another is found there.
    const own = new Set(ids.map((id) => byId.get(id)?.joinedInto ?? id));
    return [...own].flatMap((id) => {
      const person = byId.get(id);
      if (person === undefined) return [];
      const found = looked.get(id) ?? herePatient(db, person);
      looked.set(id, found);
      return [found];
    });
  };
  return {
    byNumber: (number) =>
      patientsOf((numbers.get(searchWord(number)) ?? []).map(({ patientId }) => patientId)),
    bornOn: (on: Day) => patientsOf((births.get(on) ?? []).map(({ id }) => id)),
  };
}
