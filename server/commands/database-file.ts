import { fileNamed } from "#server/commands/file-named.ts";
import { readEnv } from "#server/env.ts";

/** The file that DATABASE_FILE names. */
export const databaseFile = (): string => fileNamed(readEnv(process.env).DATABASE_FILE);
