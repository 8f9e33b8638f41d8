import { execFile } from "node:child_process";
import { describe, expect, it } from "vitest";
import { backUp } from "#db/backup.ts";
import { openDatabase } from "#db/connection.ts";
import { newestVersions } from "#db/queries/versions.ts";
import { PASSWORD, testDatabase } from "#tests/support/database.ts";
import { testFolder } from "#tests/support/folder.ts";

type Run = { readonly code: number; readonly stdout: string; readonly stderr: string };

const protocol = (file: string, password: string, ...args: string[]): Promise<Run> =>
  new Promise((resolve) => {
    const all = ["--import", "tsx", "server/commands/protocol.ts", ...args];
    const env = { ...process.env, DATABASE_FILE: file, DWELLBOOK_PASSWORD: password };
    const child = execFile(process.execPath, all, { env }, (error, stdout, stderr) =>
      resolve({ code: error === null ? 0 : Number(error.code), stdout, stderr }),
    );
    child.stdin?.end();
  });

describe("npm run protocol", { timeout: 60_000 }, () => {
  it("shows what is approved, asks for the name, and approves once", async () => {
    using folder = testFolder();
    const file = folder.in("clinic.sqlite");
    using made = testDatabase();
    await backUp(made, file);

    const unnamed = await protocol(file, PASSWORD, "approve", "--by", "petra");
    expect(unnamed.stdout).toMatch(/^Version 1 has \d+ rows of intervals/);
    expect(unnamed.stderr).toContain("type your full name");
    expect(unnamed.code).toBe(1);

    const named = ["approve", "--by", "Petra", "--name", "petra physick"];
    const done = await protocol(file, PASSWORD, ...named);
    expect(done).toMatchObject({ code: 0, stderr: "" });
    expect(done.stdout).toContain("Version 2 is approved by Petra Physick on ");

    const again = await protocol(file, PASSWORD, ...named);
    expect(again.code).toBe(1);
    expect(again.stderr).toContain("Version 2 of the protocol was approved by Petra Physick");
    const db = openDatabase(file);
    expect(newestVersions(db)).toEqual({ protocol: 2, calendar: 1 });
    db.sqlite.close();
  });

  it.each([
    ["nobody named", ["approve"]],
    ["no command", ["--by", "petra"]],
    ["an unknown flag", ["approve", "--by", "petra", "--yes"]],
  ])("%s: the usage, exit 1", async (_, args) => {
    const { code, stderr } = await protocol("none.sqlite", PASSWORD, ...args);
    expect(stderr).toContain("Use it like:");
    expect(code).toBe(1);
  });
});
