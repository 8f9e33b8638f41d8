import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { openDatabase } from "#db/connection.ts";
import { clinicOf } from "#db/queries/clinic.ts";
import { newestVersions } from "#db/queries/versions.ts";
import { machineNow } from "#server/clock.ts";
import { sessionOf } from "#server/sign-in/session-of.ts";
import { signIn } from "#server/sign-in/sign-in.ts";
import { testFolder } from "#tests/support/folder.ts";
import { runCommand as run } from "#tests/support/run-command.ts";

const PASSWORD = "eight calm badgers";

const who = ["--user", "ivy", "--name", "Ivy Leadworth", "--role", "lead"];
const clinic = ["--clinic", "Quillmere Tube Clinic", "--zone", "America/Santiago"];

describe("npm run staff and npm run backup", { timeout: 60_000 }, () => {
  it("make a database with its clinic and first account, list it, and copy it", async () => {
    using folder = testFolder();
    const env = { DATABASE_FILE: "clinic.sqlite", INIT_CWD: folder.path, DWELLBOOK_PASSWORD: PASSWORD };
    expect(await run("staff", env, "add", ...who, ...clinic)).toEqual({
      code: 0,
      stdout: "Ivy Leadworth can sign in as ivy.\n",
      stderr: "",
    });
    expect((await run("staff", env, "list")).stdout).toBe("ivy\tIvy Leadworth\tlead\n");
    const copied = await run("backup", env, "copy.sqlite");
    expect(copied.stdout).toMatch(/copy\.sqlite: \d+ pages copied and checked\.\n$/);

    const db = openDatabase(folder.in("copy.sqlite"));
    expect(clinicOf(db)).toMatchObject({ zone: "America/Santiago", isDemo: false, clockOffsetMs: 0 });
    expect(newestVersions(db)).toEqual({ protocol: 1, calendar: 1 });
    const attempt = { userName: "ivy", password: PASSWORD, address: "127.0.0.1", replaces: null };
    const token = await signIn(db, attempt, machineNow());
    expect(sessionOf(db, token, machineNow())?.person.role).toBe("lead");
    db.sqlite.close();
  });

  it.each([
    ["no command", [], "Use it like:"],
    ["an unknown flag", ["add", "--admin"], "Use it like:"],
    [
      "a role that does not exist",
      ["add", ...who.slice(0, 4), "--role", "boss"],
      '"boss" is not one of the choices',
    ],
    ["nobody to ask", ["add", "--role", "lead"], "Type User name"],
    ["an approver who is no physician", ["add", ...who, ...clinic, "--approver"], "Only a physician"],
    [
      "an unknown zone",
      ["add", ...who, "--clinic", "C", "--zone", "Mars/Base"],
      '"Mars/Base" is not a time zone',
    ],
  ])("%s: one sentence, exit 1, no account", async (_, args, sentence) => {
    using folder = testFolder();
    const file = folder.in("clinic.sqlite");
    const env = { DATABASE_FILE: file, DWELLBOOK_PASSWORD: PASSWORD };
    const { code, stdout, stderr } = await run("staff", env, ...args);
    expect({ code, stdout }).toEqual({ code: 1, stdout: "" });
    expect(stderr).toContain(sentence);
    expect(stderr).not.toContain(" at ");
    if (existsSync(file)) expect((await run("staff", env, "list")).stdout).toBe("");
  });

  it("a backup of no database, or to no file, is refused", async () => {
    using folder = testFolder();
    const env = { DATABASE_FILE: folder.in("nowhere.sqlite") };
    expect((await run("backup", env)).stderr).toBe("Type the file for the copy.\n");
    const { code, stderr } = await run("backup", env, folder.in("copy.sqlite"));
    expect(code).toBe(1);
    expect(stderr).toContain("There is no database at");
    expect(existsSync(folder.in("copy.sqlite"))).toBe(false);
  });
});
