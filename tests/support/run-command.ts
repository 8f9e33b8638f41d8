import { execFile } from "node:child_process";

export type Run = { readonly code: number; readonly stdout: string; readonly stderr: string };

/** A command as npm runs it, with nobody at the keyboard. */
export const runCommand = (file: string, env: Record<string, string>, ...args: string[]): Promise<Run> =>
  new Promise((resolve) => {
    const all = ["node_modules/tsx/dist/cli.mjs", `server/commands/${file}.ts`, ...args];
    const child = execFile(
      process.execPath,
      all,
      { env: { ...process.env, ...env } },
      (error, stdout, stderr) => resolve({ code: error === null ? 0 : Number(error.code), stdout, stderr }),
    );
    child.stdin?.end();
  });
