import { isAbsolute, join } from "node:path";
import { readEnv } from "#server/env.ts";

/** The file that DATABASE_FILE names, from the folder in which the command was called: npm itself moves to the project's. */
export function databaseFile(): string {
  const named = readEnv(process.env).DATABASE_FILE;
  return isAbsolute(named) ? named : join(process.env.INIT_CWD ?? process.cwd(), named);
}
