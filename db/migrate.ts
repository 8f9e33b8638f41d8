import { mkdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type Sqlite from "better-sqlite3";
import { claimFile } from "#db/claim-file.ts";
import { naming } from "#db/connection.ts";
import { connect, type Database } from "#db/sqlite.ts";
import { appliedMigrations, knownMigrations, standingOf } from "#db/standing.ts";
import { inTransaction } from "#db/transaction.ts";
import { DomainError } from "#shared/errors/refusal.ts";

const FOLDER = fileURLToPath(new URL("./migrations", import.meta.url));
const BREAK = "--> statement-breakpoint";

/** Strict, unlike the table that the generator's own runner makes. */
const OWN_TABLE =
  "create table if not exists migrations (position integer primary key, name text not null unique) strict";

export type Migrated = { readonly applied: readonly string[]; readonly backup: string | null };

function run(sqlite: Sqlite.Database, name: string): void {
  const statements = readFileSync(join(FOLDER, `${name}.sql`), "utf8").split(BREAK);
  for (const statement of statements) sqlite.exec(statement);
  sqlite.prepare("insert into migrations (name) values (?)").run(name);
}

function refuseBrokenLinks(sqlite: Sqlite.Database): void {
  const broken = sqlite.pragma("foreign_key_check");
  if (Array.isArray(broken) && broken.length > 0) {
    throw new Error(`migration leaves ${broken.length} rows that point nowhere`);
  }
}

/**
 * Runs what is pending, all of it or nothing. Foreign keys are off meanwhile, as a table is rebuilt by dropping it, and
 * checked before the commit. They have to be switched before the transaction begins: inside one the switch does nothing.
 */
export function migrate(db: Database): readonly string[] {
  db.sqlite.pragma("foreign_keys = OFF");
  try {
    return inTransaction(db, ({ sqlite }) => {
      sqlite.exec(OWN_TABLE);
      const applied = appliedMigrations(sqlite);
      const pending = knownMigrations.filter((name) => !applied.includes(name));
      for (const name of pending) run(sqlite, name);
      refuseBrokenLinks(sqlite);
      return pending;
    });
  } finally {
    db.sqlite.pragma("foreign_keys = ON");
  }
}

function copyBeside(sqlite: Sqlite.Database, file: string): string {
  const name = `${file}.before-${knownMigrations.at(-1)}`;
  let copy = name;
  for (let tried = 2; !claimFile(copy); tried += 1) copy = `${name}-${tried}`;
  sqlite.prepare("vacuum into ?").run(copy);
  return copy;
}

/**
 * Brings a file up to this code, and makes it if it is missing. A file with data is copied beside itself first. Throws a
 * DomainError for a file that is newer than this code, of another program, no database, or read-only.
 */
export function migrateFile(file: string): Migrated {
  mkdirSync(dirname(file), { recursive: true });
  claimFile(file);
  return naming(file, () => {
    const db = connect(file);
    try {
      const standing = standingOf(db.sqlite);
      if (standing === "foreign") throw new DomainError({ code: "database-not-one", args: { file } });
      if (standing === "newer") throw new DomainError({ code: "database-newer", args: { file } });
      const backup = standing === "older" ? copyBeside(db.sqlite, file) : null;
      return { applied: migrate(db), backup };
    } finally {
      db.sqlite.close();
    }
  });
}
