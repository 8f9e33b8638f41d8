import { emptyProjections } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { rebuildAll } from "#server/record/rebuild.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { msOf } from "#tests/bench/sample.ts";

const PER = 100_000;

const projections = ["tubes", "open_steps"] as const;

/** Reads every event and writes the rows that stand, through the driver alone: what no rule could save. */
function rawMs(db: Database): number {
  const { sqlite } = db;
  const copies = projections.map((table) => {
    const rows = sqlite.prepare<[], unknown[]>(`select * from ${table}`).raw().all();
    const places = rows[0]?.map(() => "?").join(", ");
    return { rows, insert: `insert into ${table} values (${places})` };
  });
  inTransaction(db, emptyProjections);
  const readAndWrite = (): void => {
    sqlite.prepare("select * from events order by patient_id, seq").raw().all();
    for (const { rows, insert } of copies) {
      const statement = sqlite.prepare(insert);
      for (const row of rows) statement.run(...row);
    }
  };
  return msOf(() => inTransaction(db, readAndWrite));
}

/** Every tube and every step again from events alone, into empty projections. */
export function rebuildFigure(db: Database, events: number): Figure {
  const scale = PER / events;
  const floor = rawMs(db) * scale;
  inTransaction(db, emptyProjections);
  return {
    what: `rebuild, per ${PER.toLocaleString("en-US")} events`,
    value: msOf(() => void rebuildAll(db)) * scale,
    unit: "ms",
    floor: { is: "the events read and the same rows written through the driver alone", value: floor },
    aim: null,
  };
}
