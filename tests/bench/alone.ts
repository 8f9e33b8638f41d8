import { execFileSync } from "node:child_process";
import { serverFlags } from "#server/commands/serve.mjs";
import type { Figure } from "#tests/bench/figure.ts";

/** Figures of a process by itself, run as the server is: whoever filled the clinics has a heap that no server has. */
export function alone(script: string, file: string): Figure | readonly Figure[] {
  const args = [...serverFlags, "--import", "tsx", `tests/bench/${script}`, file];
  return JSON.parse(execFileSync(process.execPath, args, { encoding: "utf8" })) as Figure | readonly Figure[];
}
