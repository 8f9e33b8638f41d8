import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { runTypeScript } from "#server/commands/run.mjs";
import { signInsFile, templateFile } from "#tests/e2e/support/template.ts";

/** Seeds the demo clinic once; each worker then serves its own copy. */
export default async function seedTemplate(): Promise<void> {
  mkdirSync(dirname(templateFile), { recursive: true });
  for (const end of ["", "-wal", "-shm"]) rmSync(`${templateFile}${end}`, { force: true });
  await runTypeScript("server/commands/migrate.ts", templateFile);
  writeFileSync(signInsFile, await runTypeScript("seed-demo/main.ts", templateFile));
}
