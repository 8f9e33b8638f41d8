import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { backUp } from "#db/backup.ts";
import { openDatabase } from "#db/connection.ts";
import { machineNow } from "#server/clock.ts";
import { signIn } from "#server/sign-in/sign-in.ts";
import { exportPartNames } from "#shared/words/exports.ts";
import { people } from "#tests/support/database.ts";
import { placed } from "#tests/support/factories.ts";
import { testFolder } from "#tests/support/folder.ts";
import { clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { withoutStamp } from "#tests/support/record-file.ts";
import { runCommand } from "#tests/support/run-command.ts";
import { command } from "#tests/support/told.ts";

const NEW = "nine patient otters";
const linesOf = (file: string): string[] => withoutStamp(readFileSync(file, "utf8").split("\n"));

async function clinicIn(file: string): Promise<void> {
  using db = clinicWithPatient();
  recordAs(db, [{ ...command(placed({ on: "2026-05-29" })), eventId: "e1" }]);
  await backUp(db, file);
}

describe("npm run export, npm run import and npm run staff -- password", { timeout: 60_000 }, () => {
  it("carry a clinic into a second database, where a new password opens it", async () => {
    using folder = testFolder();
    await clinicIn(folder.in("first.sqlite"));
    const first = { DATABASE_FILE: "first.sqlite", INIT_CWD: folder.path };
    const second = { ...first, DATABASE_FILE: "second.sqlite", DWELLBOOK_PASSWORD: NEW };

    const exported = await runCommand("export", first, "away");
    expect(exported.stdout.trim().split("\n")).toEqual(
      exportPartNames.map((part) => folder.in(`away/${part}`)),
    );
    expect(readdirSync(folder.in("away")).toSorted()).toEqual([...exportPartNames].toSorted());
    expect(statSync(folder.in("away/record.json")).mode & 0o777).toBe(0o600);

    expect(await runCommand("import", second, "away/record.json")).toEqual({
      code: 0,
      stdout: expect.stringContaining("the tubes and steps of 1 patients computed."),
      stderr: "",
    });
    expect((await runCommand("export", second, "back")).code).toBe(0);
    expect(linesOf(folder.in("back/record.json"))).toEqual(linesOf(folder.in("away/record.json")));

    const { userName, fullName } = people.lead;
    const given = await runCommand("staff", second, "password", "--user", userName);
    expect(given.stdout).toBe(`${fullName} has a new password and signs in as ${userName}.\n`);
    const db = openDatabase(folder.in("second.sqlite"));
    const attempt = { userName, password: NEW, address: "127.0.0.1", replaces: null };
    expect(await signIn(db, attempt, machineNow())).toBeTypeOf("string");
    db.sqlite.close();
  });

  it("write over no file, and leave nothing of an export that was refused", async () => {
    using folder = testFolder();
    await clinicIn(folder.in("first.sqlite"));
    writeFileSync(folder.in("steps.csv"), "mine");
    const env = { DATABASE_FILE: "first.sqlite", INIT_CWD: folder.path };
    const { code, stderr } = await runCommand("export", env, ".");
    expect(code).toBe(1);
    expect(stderr).toBe(`There is already a file at ${folder.in("steps.csv")}. Choose another name.\n`);
    expect(readFileSync(folder.in("steps.csv"), "utf8")).toBe("mine");
    expect(existsSync(folder.in("record.json"))).toBe(false);
  });

  it("say in one sentence what is missing, and make no database for a file that is none", async () => {
    using folder = testFolder();
    writeFileSync(folder.in("other.json"), '{"name":"Brackenfold","tube":"PCN L"}\n');
    const env = { DATABASE_FILE: "new.sqlite", INIT_CWD: folder.path };
    expect((await runCommand("export", env)).stderr).toBe("Type the folder for the export.\n");
    expect((await runCommand("import", env)).stderr).toBe("Type the file to bring in.\n");
    expect((await runCommand("export", env, "away")).stderr).toContain("There is no database at");
    const { code, stderr } = await runCommand("import", env, "other.json");
    expect(code).toBe(1);
    expect(stderr).toMatch(/^\S+other\.json is no record that Dwellbook wrote\. [^\n]+\n$/);
    expect(readdirSync(folder.path)).toEqual(["other.json"]);
  });
});
