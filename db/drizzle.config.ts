import { defineConfig } from "drizzle-kit";

/** `npx drizzle-kit generate --config db/drizzle.config.ts`, then complete the file by hand: STRICT, triggers. */
export default defineConfig({ dialect: "sqlite", schema: "./db/schema/*.ts", out: "./db/migrations" });
