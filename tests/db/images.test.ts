import type Sqlite from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { backUp } from "#db/backup.ts";
import { openDatabase } from "#db/connection.ts";
import { migrate, migrateFile } from "#db/migrate.ts";
import { emptyProjections } from "#db/queries/projections.ts";
import { connect } from "#db/sqlite.ts";
import { knownMigrations } from "#db/standing.ts";
import { inTransaction } from "#db/transaction.ts";
import { compareWithRebuilt, rebuildAll } from "#server/record/rebuild.ts";
import { testFolder } from "#tests/support/folder.ts";
import { columnsOf, keptImages, restoreImage, rowsOf, schemaOf, tablesOf } from "#tests/support/images.ts";

/** Everything in a database, in the columns that it had then. */
type Contents = ReadonlyMap<
  string,
  { readonly columns: readonly string[]; readonly rows: readonly unknown[] }
>;

const contentsOf = (sqlite: Sqlite.Database): Contents =>
  new Map(
    tablesOf(sqlite).map((table) => {
      const columns = columnsOf(sqlite, table);
      return [table, { columns, rows: rowsOf(sqlite, table, columns) }];
    }),
  );

/** What an upgrade may write anew: the list of migrations, and what is computed from events. */
const madeAnew = ["migrations", "tubes", "open_steps", "patient_states"];
/** A column that is made from the row's others may be written anew too: what the finder compares. */
const withoutSearch = (rows: readonly unknown[]): readonly unknown[] =>
  rows.map((row) => ({ ...(row as object), search: undefined }));

const asTheyWere = (rows: readonly unknown[]): readonly unknown[] => rows;

/** "No interpreter" was written where nobody had been asked, so it is not known any more. */
const interpreterUnasked = (rows: readonly unknown[]): readonly unknown[] =>
  rows.map((row) => {
    const cells = row as { readonly needs_interpreter?: number | null };
    return cells.needs_interpreter === 0 ? { ...cells, needs_interpreter: null } : cells;
  });

function restored(name: string, file: string): Contents {
  restoreImage(name, file);
  const { sqlite } = connect(file);
  const contents = contentsOf(sqlite);
  sqlite.close();
  return contents;
}

const appliedThen = (image: Contents): readonly unknown[] =>
  (image.get("migrations")?.rows ?? []).map((row) => (row as { readonly name: string }).name);

const sortedSchema = (sqlite: Sqlite.Database) =>
  schemaOf(sqlite).toSorted((a, b) => (`${a.type} ${a.name}` < `${b.type} ${b.name}` ? -1 : 1));

it("the image before the second migration is kept", () => {
  expect(keptImages()[0]).toBe("0000_opening");
});

describe.each(keptImages())("a database as %s left it", (name) => {
  it("holds a record of several kinds, with amendments, readings, drafts and sessions", () => {
    using folder = testFolder();
    const image = restored(name, folder.in("clinic.sqlite"));
    const count = (table: string) => image.get(table)?.rows.length ?? 0;
    for (const table of ["events", "readings", "acts", "drafts", "sessions", "reads", "open_steps"])
      expect(count(table), table).toBeGreaterThan(0);
    const kinds = (image.get("tubes")?.rows ?? []).map((row) => (row as { readonly kind: string }).kind);
    expect(new Set(kinds).size).toBeGreaterThan(5);
    const events = (image.get("events")?.rows ?? []).map((row) => (row as { readonly kind: string }).kind);
    expect(events).toEqual(expect.arrayContaining(["placed", "converted", "amended", "voided", "died"]));
  });

  it("is copied beside itself as it was, where something is pending, and then has every migration", () => {
    using folder = testFolder();
    const file = folder.in("clinic.sqlite");
    const image = restored(name, file);
    const pending = knownMigrations.filter((known) => !appliedThen(image).includes(known));
    const copy = pending.length === 0 ? null : `${file}.before-${knownMigrations.at(-1)}`;
    expect(migrateFile(file)).toEqual({ applied: pending, backup: copy });
    if (copy !== null) {
      const { sqlite } = connect(copy);
      expect(contentsOf(sqlite)).toEqual(image);
      sqlite.close();
    }
    expect(migrateFile(file)).toEqual({ applied: [], backup: null });
  });

  it("keeps every row of the record as it was, whole and pointing somewhere", () => {
    using folder = testFolder();
    const file = folder.in("clinic.sqlite");
    const image = restored(name, file);
    migrateFile(file);
    const { sqlite } = openDatabase(file);
    const then = appliedThen(image).includes("0002_interpreter_unknown") ? asTheyWere : interpreterUnasked;
    for (const [table, { columns, rows }] of image) {
      if (madeAnew.includes(table)) continue;
      const now = rowsOf(sqlite, table, columns);
      if (table === "event_kinds") expect(now).toEqual(expect.arrayContaining([...rows]));
      else expect(withoutSearch(now), table).toEqual(withoutSearch(then(rows)));
    }
    expect(sqlite.pragma("integrity_check", { simple: true })).toBe("ok");
    expect(sqlite.pragma("foreign_key_check")).toEqual([]);
    sqlite.close();
  });

  it("stands as a rebuild of its events makes it; only rows of older rules may differ", async () => {
    using folder = testFolder();
    const file = folder.in("clinic.sqlite");
    restoreImage(name, file);
    migrateFile(file);
    const stands = openDatabase(file);
    await backUp(stands, folder.in("copy.sqlite"));
    const fresh = openDatabase(folder.in("copy.sqlite"));
    inTransaction(fresh, emptyProjections);
    expect(rebuildAll(fresh)).toBeGreaterThan(4);
    expect(compareWithRebuilt(stands, fresh).spoiled).toEqual([]);
    fresh.sqlite.close();
    stands.sqlite.close();
  });

  it("has the schema of a new database afterwards: STRICT, checks, indices and every refusing trigger", () => {
    using folder = testFolder();
    const file = folder.in("clinic.sqlite");
    restoreImage(name, file);
    migrateFile(file);
    const { sqlite } = openDatabase(file);
    const made = connect(":memory:");
    migrate(made);
    expect(sortedSchema(sqlite)).toEqual(sortedSchema(made.sqlite));
    expect(sqlite.pragma("application_id")).toEqual(made.sqlite.pragma("application_id"));
    const tables = sqlite.pragma("table_list") as { name: string; type: string; strict: number }[];
    const loose = tables.filter(({ name, strict }) => strict === 0 && !name.startsWith("sqlite_"));
    expect(loose).toEqual([]);
    const guarded = sqlite
      .prepare<[], string>("select distinct tbl_name from sqlite_schema where type = 'trigger'")
      .pluck()
      .all();
    // A table that came later is empty here: a trigger speaks where there is a row.
    const filled = guarded.filter((table) => rowsOf(sqlite, table, columnsOf(sqlite, table)).length > 0);
    expect(filled).toEqual(expect.arrayContaining(["acts", "events", "event_tubes", "readings", "reads"]));
    for (const table of filled) {
      const [column] = columnsOf(sqlite, table);
      expect(() => sqlite.exec(`update "${table}" set "${column}" = "${column}"`)).toThrow("append only");
      expect(() => sqlite.exec(`delete from "${table}"`)).toThrow("append only");
    }
    made.sqlite.close();
    sqlite.close();
  });
});
