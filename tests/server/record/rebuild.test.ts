import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { backUp } from "#db/backup.ts";
import { openDatabase } from "#db/connection.ts";
import { openProposals } from "#db/queries/proposals.ts";
import { exchanged, fellOut, newPuncture, placed, takenOver } from "#tests/support/factories.ts";
import { testFolder } from "#tests/support/folder.ts";
import { addInventedPatient, clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { command } from "#tests/support/told.ts";

const as = (eventId: string, entry: Parameters<typeof command>[0]) => ({ ...command(entry), eventId });

/** A clinic on disk with two patients and three tubes, one of them lost and replaced. */
async function clinicOnDisk(file: string): Promise<void> {
  using db = clinicWithPatient();
  addInventedPatient(db, "patient-2", "000418");
  recordAs(db, [
    as("e1", placed({ on: "2026-05-29" })),
    as("e2", exchanged({ on: "2026-08-14" })),
    as("e3", placed({ on: "2026-06-02", tube: "tube-2", kind: "abscess drain", number: 2 })),
    as("e4", fellOut({ on: "2026-06-08", tube: "tube-2" })),
    as("e5", newPuncture({ on: "2026-06-08", tube: "tube-2", order: 1 })),
  ]);
  recordAs(db, [as("f1", takenOver({ on: "2026-03-01..2026-03-31", tube: "tube-3" }))], "patient-2");
  await backUp(db, file);
}

const spoil = (file: string, sql: string): void => {
  const db = openDatabase(file);
  db.sqlite.exec(sql);
  db.sqlite.close();
};

/** The command in a fresh process, as a clinic runs it. */
const rebuild = (file: string, ...flags: string[]) =>
  spawnSync(process.execPath, ["--import", "tsx", "server/commands/rebuild.ts", ...flags], {
    env: { ...process.env, DATABASE_FILE: file },
    encoding: "utf8",
  });

describe("npm run rebuild", () => {
  it("finds every row as its events make it; a spoilt row is named and exits 1; --write puts it right", async () => {
    using folder = testFolder();
    const file = join(folder.path, "clinic.sqlite");
    await clinicOnDisk(file);
    expect(rebuild(file)).toMatchObject({
      status: 0,
      stdout: expect.stringContaining("2 patients rebuilt, 0 rows differ"),
    });

    spoil(file, "update open_steps set target_on = '2027-01-01' where id = 'tube-1:exchange'");
    const found = rebuild(file);
    expect(found.status).toBe(1);
    expect(found.stdout).toContain("open_steps tube-1:exchange: different (target_on)");

    expect(rebuild(file, "--write").status).toBe(0);
    expect(rebuild(file).status).toBe(0);
  }, 60_000);

  it("names a row that is missing and one that is left over", async () => {
    using folder = testFolder();
    const file = join(folder.path, "clinic.sqlite");
    await clinicOnDisk(file);
    spoil(file, "update open_steps set id = 'nobody:exchange' where id = 'tube-1:exchange'");
    const { status, stdout } = rebuild(file);
    expect(status).toBe(1);
    expect(stdout).toContain("tube-1:exchange: missing");
    expect(stdout).toContain("nobody:exchange: left over");
  }, 60_000);

  it("a date of older rules that would come out otherwise is proposed, not moved", async () => {
    using folder = testFolder();
    const file = join(folder.path, "clinic.sqlite");
    await clinicOnDisk(file);
    spoil(
      file,
      "update open_steps set target_on = '2026-11-02', rules_version = 0 where id = 'tube-1:exchange'",
    );
    const { status, stdout } = rebuild(file);
    expect(status).toBe(0);
    expect(stdout).toContain("1 dates would change under the new rules: proposed, not moved.");
    const db = openDatabase(file);
    expect(openProposals(db, "tube-1")).toMatchObject([
      { stood: { targetOn: "2026-11-02" }, proposed: { targetOn: "2026-10-30" }, settledByEvent: null },
    ]);
    db.sqlite.close();
  }, 60_000);
});
