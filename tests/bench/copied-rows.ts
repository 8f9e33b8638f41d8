import { migrateFile } from "#db/migrate.ts";
import { recordTableNames } from "#db/record-tables.ts";
import { connect } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { msOf } from "#tests/bench/sample.ts";

/** The same rows in an empty database, through the driver alone: tubes and steps too, though an import computes them. */
export function copiedMs(from: string, to: string): number {
  migrateFile(to);
  const db = connect(to);
  db.sqlite.prepare("attach ? as other").run(from);
  const tables = [...recordTableNames, "tubes", "open_steps"];
  const ms = msOf(() =>
    inTransaction(db, ({ sqlite }) => {
      sqlite.pragma("defer_foreign_keys = ON");
      sqlite.exec("insert or ignore into event_kinds select * from other.event_kinds");
      for (const table of tables) sqlite.exec(`insert into "${table}" select * from other."${table}"`);
    }),
  );
  db.sqlite.close();
  return ms;
}
