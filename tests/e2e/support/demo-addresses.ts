import Sqlite from "better-sqlite3";

/** Addresses in the seeded clinic, by the family name of a patient of its stories. */
export type DemoAddresses = {
  readonly patient: (familyName: string) => string;
  /** The tube of that patient that was recorded first. */
  readonly tube: (familyName: string) => string;
  /** The newest entry of that patient that a form corrects: its event and its act. */
  readonly entry: (familyName: string) => { readonly event: string; readonly act: string };
  readonly reading: (familyName: string) => string;
  /** The visit of that patient that was booked last. */
  readonly visit: (familyName: string) => string;
  /** The red flag of that patient that was raised last. */
  readonly flag: (familyName: string) => string;
  readonly person: (userName: string) => string;
  /** A type on the shelf by its name. */
  readonly type: (name: string) => string;
  /** The first day of the closure with which the clinic's calendar began. */
  readonly closure: () => string;
};

/** Reads them from the database that is served; closes it after. */
export function withDemoAddresses<T>(database: string, work: (demo: DemoAddresses) => T): T {
  const sqlite = new Sqlite(database, { readonly: true });
  const one = (sql: string, ...named: string[]): string => {
    const found = sqlite
      .prepare<string[], string>(sql)
      .pluck()
      .get(...named);
    if (found === undefined) throw new Error(`the demo has no ${named.join(", ")}`);
    return found;
  };
  const patientId = (name: string) => one("select id from patients where family_name = ?", name);
  const newest = (column: "id" | "act_id", name: string) =>
    one(
      `select ${column} from events where patient_id = ? and kind not like 'visit %' and kind not like 'red flag %' and kind <> 'call attempted' order by seq desc limit 1`,
      patientId(name),
    );
  const tubeId = (name: string) =>
    one(
      "select tube_id from events join event_tubes on event_id = id where patient_id = ? order by seq limit 1",
      patientId(name),
    );
  try {
    return work({
      patient: (name) => `/patients/${patientId(name)}`,
      tube: (name) => `/tubes/${tubeId(name)}`,
      entry: (name) => ({ event: newest("id", name), act: newest("act_id", name) }),
      visit: (name) =>
        `/patients/${patientId(name)}/visits/${one("select id from visits where patient_id = ? order by rowid desc limit 1", patientId(name))}`,
      flag: (name) =>
        `/patients/${patientId(name)}/flags/${one("select id from events where patient_id = ? and kind = 'red flag raised' order by seq desc limit 1", patientId(name))}`,
      reading: (name) => one("select id from readings where tube_id = ? limit 1", tubeId(name)),
      type: (name) => `/shelf/${one("select id from shelf_types where name = ?", name)}`,
      closure: () => one("select content ->> '$.closures[0].from' from calendar_versions where version = 1"),
      person: (userName) => one("select id from staff where user_name = ?", userName),
    });
  } finally {
    sqlite.close();
  }
}
