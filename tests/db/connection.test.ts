import { chmodSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import Sqlite from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { openDatabase } from "#db/connection.ts";
import { migrateFile } from "#db/migrate.ts";
import { knownMigrations } from "#db/standing.ts";
import { eventKinds } from "#shared/tube/event-kinds.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { testFolder } from "#tests/support/folder.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

/** A migrated file, opened and closed once, as a clinic's database is. */
function madeIn(folder: ReturnType<typeof testFolder>): string {
  const file = folder.in("clinic.sqlite");
  migrateFile(file);
  return file;
}

function change(file: string, sql: string): void {
  const sqlite = new Sqlite(file);
  sqlite.exec(sql);
  sqlite.close();
}

/** root may write anything; for the time of one call the process is somebody else. */
function asSomebodyElse<T>(work: () => T): T {
  const me = process.geteuid?.();
  if (me !== 0) return work();
  process.seteuid?.(65534);
  try {
    return work();
  } finally {
    process.seteuid?.(0);
  }
}

describe("a connection", () => {
  it.each([
    ["journal_mode", "wal"],
    ["synchronous", 2],
    ["wal_autocheckpoint", 8000],
    ["mmap_size", 1_073_741_824],
    ["foreign_keys", 1],
    ["trusted_schema", 0],
    ["recursive_triggers", 1],
  ])("of a file that is opened again has %s = %s", (pragma, value) => {
    using folder = testFolder();
    const file = madeIn(folder);
    const { sqlite } = openDatabase(file);
    expect(sqlite.pragma(pragma, { simple: true })).toBe(value);
    sqlite.close();
  });

  it("waits five seconds for another writer", () => {
    using folder = testFolder();
    const { sqlite } = openDatabase(madeIn(folder));
    expect(sqlite.pragma("busy_timeout", { simple: true })).toBe(5000);
    sqlite.close();
  });

  it("brings the kinds of event that the code knows", () => {
    using folder = testFolder();
    const { sqlite } = openDatabase(madeIn(folder));
    const kinds = sqlite.prepare<[], string>("select kind from event_kinds order by kind").pluck().all();
    expect(kinds).toEqual([...eventKinds].toSorted());
    sqlite.close();
  });

  it("leaves a new file to its owner alone", () => {
    using folder = testFolder();
    expect(statSync(madeIn(folder)).mode & 0o077).toBe(0);
  });
});

describe("a file that cannot be used is refused in one sentence", () => {
  it("missing, and no file is made", () => {
    using folder = testFolder();
    const file = folder.in("nowhere.sqlite");
    expect(refusalsOf(() => openDatabase(file))).toEqual([{ code: "database-missing", args: { file } }]);
    expect(readdirSync(folder.path)).toEqual([]);
  });

  it.each([
    ["text", "This is a letter, not a database. ".repeat(40)],
    ["a few bytes", "abc"],
  ])("no database: %s", (_, content) => {
    using folder = testFolder();
    const file = folder.in("letter.sqlite");
    writeFileSync(file, content);
    expect(refusalsOf(() => openDatabase(file))).toEqual([{ code: "database-not-one", args: { file } }]);
    expect(refusalsOf(() => migrateFile(file))).toEqual([{ code: "database-not-one", args: { file } }]);
  });

  it("a folder", () => {
    using folder = testFolder();
    const file = folder.path;
    expect(refusalsOf(() => openDatabase(file))).toEqual([{ code: "database-not-one", args: { file } }]);
  });

  it("the database of another program is neither opened nor migrated", () => {
    using folder = testFolder();
    const file = folder.in("other.sqlite");
    change(file, "create table migrations (name text)");
    expect(refusalsOf(() => openDatabase(file))).toEqual([{ code: "database-not-one", args: { file } }]);
    expect(refusalsOf(() => migrateFile(file))).toEqual([{ code: "database-not-one", args: { file } }]);
  });

  it("read-only", () => {
    using folder = testFolder();
    const file = madeIn(folder);
    chmodSync(file, 0o444);
    chmodSync(folder.path, 0o555);
    expect(refusalsOf(() => asSomebodyElse(() => openDatabase(file)))).toEqual([
      { code: "database-read-only", args: { file } },
    ]);
    expect(refusalsOf(() => asSomebodyElse(() => migrateFile(file)))).toEqual([
      { code: "database-read-only", args: { file } },
    ]);
    chmodSync(folder.path, 0o755);
  });

  it("newer than the code", () => {
    using folder = testFolder();
    const file = madeIn(folder);
    change(file, "insert into migrations (name) values ('9999_later')");
    expect(refusalsOf(() => openDatabase(file))).toEqual([{ code: "database-newer", args: { file } }]);
    expect(refusalsOf(() => migrateFile(file))).toEqual([{ code: "database-newer", args: { file } }]);
  });

  it.each([
    ["empty", "vacuum"],
    ["older", `delete from migrations where name = '${knownMigrations.at(-1)}'`],
  ])("%s: waits for its migration", (name, sql) => {
    using folder = testFolder();
    const file = name === "empty" ? folder.in("empty.sqlite") : madeIn(folder);
    change(file, sql);
    expect(refusalsOf(() => openDatabase(file))).toEqual([{ code: "database-older", args: { file } }]);
  });

  it("damaged", () => {
    using folder = testFolder();
    const file = madeIn(folder);
    const bytes = readFileSync(file);
    writeFileSync(file, bytes.fill(0xff, 4096));
    expect(refusalsOf(() => openDatabase(file))).toEqual([{ code: "database-damaged", args: { file } }]);
  });

  it("each sentence names the file", () => {
    const codes = [
      "database-missing",
      "database-not-one",
      "database-damaged",
      "database-read-only",
      "database-busy",
      "database-older",
      "database-newer",
    ] as const;
    for (const code of codes) {
      expect(refusalSentence({ code, args: { file: "clinic.sqlite" } })).toContain("clinic.sqlite");
    }
  });
});
