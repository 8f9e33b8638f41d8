import type Sqlite from "better-sqlite3";
import { APPLICATION_ID } from "#db/sqlite.ts";
import journal from "./migrations/meta/_journal.json" with { type: "json" };

/** Migrations that this code knows, oldest first. */
export const knownMigrations: readonly string[] = journal.entries.map((entry) => entry.tag);

/** How a file stands to this code. `foreign` is a database of another program. */
export type Standing = "empty" | "current" | "older" | "newer" | "foreign";

export const appliedMigrations = (sqlite: Sqlite.Database): readonly string[] =>
  sqlite.prepare<[], string>("select name from migrations order by position").pluck().all();

export function standingOf(sqlite: Sqlite.Database): Standing {
  const tables = sqlite.prepare<[], number>("select count(*) from sqlite_schema").pluck().get();
  if (tables === 0) return "empty";
  if (sqlite.pragma("application_id", { simple: true }) !== APPLICATION_ID) return "foreign";
  const applied = appliedMigrations(sqlite);
  if (applied.some((name) => !knownMigrations.includes(name))) return "newer";
  return applied.length < knownMigrations.length ? "older" : "current";
}
