import type { Database } from "#db/sqlite.ts";

/** A row that does not stand as its events make it. `rulesVersion` is the one under which the standing row was computed. */
export type Difference = {
  readonly table: "tubes" | "open_steps";
  readonly id: string;
  readonly patientId: string;
  readonly found: "missing" | "left over" | "different";
  readonly columns: readonly string[];
  readonly rulesVersion: number | null;
};

type Row = Readonly<Record<string, string | number | null>>;

function rowsOf(db: Database, table: string): Map<string, Row> {
  const rows = db.sqlite.prepare<[], Row>(`select * from "${table}" order by id`).all();
  return new Map(rows.map((row) => [String(row.id), row]));
}

function differencesIn(
  table: "tubes" | "open_steps",
  stands: Map<string, Row>,
  fresh: Map<string, Row>,
): Difference[] {
  const ids = [...new Set([...stands.keys(), ...fresh.keys()])].toSorted();
  return ids.flatMap((id): Difference[] => {
    const old = stands.get(id);
    const next = fresh.get(id);
    const columns = Object.keys(old ?? next ?? {}).filter((column) => old?.[column] !== next?.[column]);
    if (columns.length === 0) return [];
    const found = old === undefined ? "missing" : next === undefined ? "left over" : "different";
    const rulesVersion = old === undefined ? null : Number(old.rules_version);
    return [{ table, id, patientId: String((old ?? next)?.patient_id), found, columns, rulesVersion }];
  });
}

/** Every row of the two projections of one database that is not, column by column, the row of the other. */
export function compareProjections(stands: Database, fresh: Database): readonly Difference[] {
  return (["tubes", "open_steps"] as const).flatMap((table) =>
    differencesIn(table, rowsOf(stands, table), rowsOf(fresh, table)),
  );
}
