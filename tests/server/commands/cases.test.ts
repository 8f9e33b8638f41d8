import { execFile } from "node:child_process";
import { describe, expect, it } from "vitest";

type Run = { readonly code: number; readonly stdout: string; readonly stderr: string };

const cases = (...args: string[]): Promise<Run> =>
  new Promise((resolve) => {
    const all = ["--import", "tsx", "server/commands/cases.ts", ...args];
    const env = { ...process.env, DATABASE_FILE: "", INIT_CWD: process.cwd() };
    execFile(process.execPath, all, { env }, (error, stdout, stderr) =>
      resolve({ code: error === null ? 0 : Number(error.code), stdout, stderr }),
    );
  });

describe("npm run cases", { timeout: 60_000 }, () => {
  it("runs the shipped file from where it is called", async () => {
    const { code, stdout, stderr } = await cases("docs/worked-cases.json");
    expect(stderr).toBe("");
    expect(stdout).toContain("0 differ, 0 cannot run.\n");
    expect(code).toBe(0);
  });

  it.each([
    ["no file named", [], "Use it like:"],
    ["a file that is no JSON", ["README.md"], "The file is no JSON."],
  ])("%s: a sentence, exit 2", async (_, args, sentence) => {
    const { code, stderr } = await cases(...args);
    expect(stderr).toContain(sentence);
    expect(stderr).not.toContain(" at file:");
    expect(code).toBe(2);
  });
});
