import { findPatients } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { findPatient } from "#server/patients/find-patient.ts";
import { readSought } from "#shared/record/finder.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { byTurns, percentile } from "#tests/bench/sample.ts";

const TURNS = 200;
const AIM_MS = 30;

type Somebody = {
  readonly family: string;
  readonly given: string;
  readonly born: string;
  readonly number: string;
  readonly telephone: string;
};

/** Somebody far down the table, so that no search ends early. */
function somebody(db: Database): Somebody {
  const found = db.sqlite
    .prepare<[], Somebody>(
      `select family_name as family, given_name as given, birth_on as born, value as number,
        json_extract(contact, '$.telephones[0].number') as telephone
      from patients join patient_identifiers on patient_id = id and place = 1
      order by patients.rowid desc limit 1`,
    )
    .get();
  if (found === undefined) throw new Error("the clinic has no patient");
  return found;
}

const typedBy = ({ family, given, born, number, telephone }: Somebody): Readonly<Record<string, string>> => ({
  "parts of a name": `${given.slice(0, 5)} ${family.slice(-6)}`,
  "a record number": number,
  "a birth date": `${born.slice(8)}/${born.slice(5, 7)}/${born.slice(0, 4)}`,
  "a telephone": telephone.replace(" ", "-"),
  "what nobody has": "zzyzx",
});

/**
 * What is typed in the finder, to whom it means: reading it, the query, and following joined records. Against every search text and birth date
 * held in memory and compared there one after the other: what a search that keeps no index cannot do without.
 */
export function searchFigures(db: Database): readonly Figure[] {
  const held = db.sqlite
    .prepare<[], { text: string; born: string }>("select search as text, birth_on as born from patients")
    .all();
  return Object.entries(typedBy(somebody(db))).flatMap(([what, typed]) => {
    const sought = readSought(typed, today(db));
    const isMeant = ({ text, born }: (typeof held)[number]): boolean =>
      sought.some(
        ({ words, births }) =>
          words.every((word) => text.includes(word)) &&
          (births.length === 0 || births.some((day) => day === born)),
      );
    const meant = held.filter(isMeant).length;
    if (findPatients(db, sought, held.length).length !== meant)
      throw new Error(`"${what}" finds others by the query than in memory`);
    const { ours, floor } = byTurns(
      TURNS,
      () => findPatient(db, typed),
      () => held.filter(isMeant),
    );
    return [50, 95].map(
      (percent): Figure => ({
        what: `search over ${held.length.toLocaleString("en-US")} patients by ${what}, p${percent}`,
        value: percentile(ours, percent),
        unit: "ms",
        floor: { is: "the same words looked for in texts held in memory", value: percentile(floor, percent) },
        aim: { kind: "at most", value: AIM_MS },
      }),
    );
  });
}
