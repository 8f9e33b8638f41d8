import { readFileSync } from "node:fs";
import Sqlite from "better-sqlite3";
import { generateSQLiteDrizzleJson, generateSQLiteMigration } from "drizzle-kit/api";
import { getTableColumns, is } from "drizzle-orm";
import { getTableConfig, SQLiteTable } from "drizzle-orm/sqlite-core";
import { describe, expect, it } from "vitest";
import { openDatabase } from "#db/connection.ts";
import { migrate, migrateFile } from "#db/migrate.ts";
import * as acts from "#db/schema/acts.ts";
import * as callHolds from "#db/schema/call-holds.ts";
import * as clinic from "#db/schema/clinic.ts";
import * as drafts from "#db/schema/drafts.ts";
import * as events from "#db/schema/events.ts";
import * as ownLists from "#db/schema/own-lists.ts";
import * as patients from "#db/schema/patients.ts";
import * as projections from "#db/schema/projections.ts";
import * as readings from "#db/schema/readings.ts";
import * as reads from "#db/schema/reads.ts";
import * as sheets from "#db/schema/sheets.ts";
import * as shelf from "#db/schema/shelf.ts";
import * as staff from "#db/schema/staff.ts";
import * as versions from "#db/schema/versions.ts";
import { knownMigrations } from "#db/standing.ts";
import { testDatabase } from "#tests/support/database.ts";
import { testFolder } from "#tests/support/folder.ts";

const schema: Record<string, unknown> = {
  ...acts,
  ...callHolds,
  ...clinic,
  ...drafts,
  ...events,
  ...ownLists,
  ...patients,
  ...projections,
  ...readings,
  ...reads,
  ...sheets,
  ...shelf,
  ...staff,
  ...versions,
};
const tables = Object.values(schema).filter((value) => is(value, SQLiteTable));

const lastSnapshot = () =>
  JSON.parse(
    readFileSync(`db/migrations/meta/${knownMigrations.at(-1)?.slice(0, 4)}_snapshot.json`, "utf8"),
  ) as Awaited<ReturnType<typeof generateSQLiteDrizzleJson>>;

type Column = { name: string; type: string; notnull: number; pk: number };

describe("schema and migrations say the same", () => {
  it("the generator finds nothing to change since the last migration", async () => {
    const current = await generateSQLiteDrizzleJson(schema);
    expect(await generateSQLiteMigration(lastSnapshot(), current)).toEqual([]);
  });

  it("the migrated database has exactly the tables of the schema, and the one that counts migrations", () => {
    using db = testDatabase();
    const made = db.sqlite
      .prepare<[], string>("select name from sqlite_schema where type = 'table' order by name")
      .pluck()
      .all();
    const named = tables.map((table) => getTableConfig(table).name);
    expect(made).toEqual([...named, "migrations"].toSorted());
  });

  it.each(tables.map((table) => [getTableConfig(table).name, table] as const))(
    "%s: columns, checks, indices and foreign keys of the migrated table are those of the schema",
    (name, table) => {
      using db = testDatabase();
      const config = getTableConfig(table);
      const made = db.sqlite.pragma(`table_info(${name})`) as Column[];
      expect(made.map((column) => [column.name, column.type.toLowerCase(), column.notnull])).toEqual(
        Object.values(getTableColumns(table)).map((column) => [
          column.name,
          column.getSQLType(),
          column.notNull ? 1 : 0,
        ]),
      );
      const sql = db.sqlite
        .prepare("select sql from sqlite_schema where name = ?")
        .pluck()
        .get(name) as string;
      for (const check of config.checks) expect(sql).toContain(`CONSTRAINT "${check.name}" CHECK`);
      const indices = db.sqlite
        .prepare("select name from sqlite_schema where type = 'index' and tbl_name = ? and sql is not null")
        .pluck()
        .all(name);
      const uniques = Object.values(getTableColumns(table)).filter((column) => column.isUnique);
      expect(indices.toSorted()).toEqual(
        [
          ...config.indexes.map((index) => index.config.name),
          ...config.uniqueConstraints.map((unique) => unique.name),
          ...uniques.map((column) => column.uniqueName),
        ].toSorted(),
      );
      const keys = db.sqlite.pragma(`foreign_key_list(${name})`) as { on_delete: string }[];
      expect(keys).toHaveLength(config.foreignKeys.length);
      expect(keys.filter((key) => key.on_delete === "CASCADE" || key.on_delete === "SET NULL")).toEqual([]);
    },
  );
});

describe("migrating", () => {
  it("makes a missing file with its folder, and a second run finds nothing to do", () => {
    using folder = testFolder();
    const file = folder.in("new/clinic.sqlite");
    expect(migrateFile(file)).toEqual({ applied: knownMigrations, backup: null });
    expect(migrateFile(file)).toEqual({ applied: [], backup: null });
    openDatabase(file).sqlite.close();
  });

  it("copies a file with data before it changes it", () => {
    using folder = testFolder();
    const file = folder.in("clinic.sqlite");
    migrateFile(file);
    const before = new Sqlite(file);
    // As a database looks to a later version whose last migration it has not had.
    before.exec("update migrations set name = '0000_before_the_first' where position = 1; drop table drafts");
    before.close();
    expect(() => migrateFile(file)).toThrow("database-newer");
    const older = new Sqlite(file);
    older.exec("delete from migrations");
    older.close();
    expect(() => migrateFile(file)).toThrow("already exists");
    const copy = new Sqlite(`${file}.before-${knownMigrations.at(-1)}`);
    expect(copy.prepare("select count(*) from sqlite_schema where name = 'clinic'").pluck().get()).toBe(1);
    copy.close();
  });

  it("a migration that leaves rows pointing nowhere is taken back whole", () => {
    using db = testDatabase();
    db.sqlite.pragma("foreign_keys = OFF");
    db.sqlite.exec(
      "insert into drafts (staff_id, form, subject, content, saved_at) values ('nobody', 'f', '', '{}', 1)",
    );
    expect(() => migrate(db)).toThrow("point nowhere");
    expect(db.sqlite.pragma("foreign_keys", { simple: true })).toBe(1);
  });
});
