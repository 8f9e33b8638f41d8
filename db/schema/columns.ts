import { type SQL, sql } from "drizzle-orm";
import { type AnySQLiteColumn, check, integer, text } from "drizzle-orm/sqlite-core";
import type { Day } from "#shared/day/day.ts";
import type { Instant } from "#shared/day/instant.ts";

/** Random 128-bit text, the only kind of id that stands in a URL. */
export const id = (name: string) => text(name);

/** Milliseconds since 1970-01-01 UTC. Columns end in `_at`. */
export const instant = (name: string) => integer(name).$type<Instant>();

/** A calendar day of the clinic, `YYYY-MM-DD`. Columns end in `_on`, or say which end of a span they are. */
export const dayText = (name: string) => text(name).$type<Day>();

/** 0 or 1. Add `isFlag` to the table: the column alone takes any integer. */
export const flag = (name: string) => integer(name, { mode: "boolean" });

/** JSON text, read and written as a value. Add `isJson` to the table. */
export const json = (name: string) => text(name, { mode: "json" });

/** Days that exist, or null. SQLite's date() turns 2026-02-31 into 2026-03-03, so the comparison refuses it. */
export const areDays = (table: string, ...columns: AnySQLiteColumn[]) =>
  columns.map((column) => check(`${table}_${column.name}_is_day`, sql`${column} is date(${column})`));

export const areFlags = (table: string, ...columns: AnySQLiteColumn[]) =>
  columns.map((column) => check(`${table}_${column.name}_is_flag`, sql`${column} in (0, 1)`));

export const areJson = (table: string, ...columns: AnySQLiteColumn[]) =>
  columns.map((column) => check(`${table}_${column.name}_is_json`, sql`json_valid(${column})`));

/** Refuses what is only blanks; says nothing of null. */
export const areFilled = (table: string, ...columns: AnySQLiteColumn[]) =>
  columns.map((column) => check(`${table}_${column.name}_filled`, sql`trim(${column}) <> ''`));

/** A CHECK against a list that the code closes. The list is written out: a CHECK holds no parameters. */
export const isOneOf = (column: AnySQLiteColumn, list: readonly string[]): SQL =>
  sql`${column} in (${sql.raw(list.map((word) => `'${word}'`).join(", "))})`;
