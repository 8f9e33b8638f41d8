import type { Database } from "#db/sqlite.ts";

/** Each projection with the column that names its rows. */
const projections = {
  tubes: "id",
  open_steps: "id",
  visits: "id",
  next_visits: "tube_id",
  call_lines: "patient_id",
  patient_states: "patient_id",
} as const;
type ProjectionTable = keyof typeof projections;
const projectionTables = Object.keys(projections) as readonly ProjectionTable[];

/** A row that does not stand as its events make it. `rulesVersion` is the one under which the standing row was computed, or, where none stands, the patient's tubes. */
export type Difference = {
  readonly table: ProjectionTable;
  readonly id: string;
  readonly patientId: string;
  readonly found: "missing" | "left over" | "different";
  readonly columns: readonly string[];
  readonly rulesVersion: number | null;
};

type Row = Readonly<Record<string, string | number | null>>;

function rowsOf(db: Database, table: ProjectionTable): Map<string, Row> {
  const key = projections[table];
  const rows = db.sqlite.prepare<[], Row>(`select * from "${table}" order by "${key}"`).all();
  return new Map(rows.map((row) => [String(row[key]), row]));
}

type Sides = {
  readonly stands: Map<string, Row>;
  readonly fresh: Map<string, Row>;
  /** The oldest rules under which a tube of each patient stands. */
  readonly rules: ReadonlyMap<string, number>;
};

function differencesIn(table: ProjectionTable, { stands, fresh, rules }: Sides): Difference[] {
  const ids = [...new Set([...stands.keys(), ...fresh.keys()])].toSorted();
  return ids.flatMap((id): Difference[] => {
    const old = stands.get(id);
    const next = fresh.get(id);
    const columns = Object.keys(old ?? next ?? {}).filter((column) => old?.[column] !== next?.[column]);
    if (columns.length === 0) return [];
    // Older releases kept none: it is folded from the events when it is asked for.
    if (table === "patient_states" && old === undefined) return [];
    const found = old === undefined ? "missing" : next === undefined ? "left over" : "different";
    const patientId = String((old ?? next)?.patient_id);
    const rulesVersion = old === undefined ? (rules.get(patientId) ?? null) : Number(old.rules_version);
    return [{ table, id, patientId, found, columns, rulesVersion }];
  });
}

/** Every row of the projections of one database that is not, column by column, the row of the other. */
export function compareProjections(stands: Database, fresh: Database): readonly Difference[] {
  const rules = new Map<string, number>();
  for (const { patient_id, rules_version } of rowsOf(stands, "tubes").values()) {
    const patient = String(patient_id);
    rules.set(patient, Math.min(rules.get(patient) ?? Number(rules_version), Number(rules_version)));
  }
  return projectionTables.flatMap((table) =>
    differencesIn(table, { stands: rowsOf(stands, table), fresh: rowsOf(fresh, table), rules }),
  );
}
