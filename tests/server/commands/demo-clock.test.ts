import { execFile } from "node:child_process";
import { describe, expect, it } from "vitest";
import { openDatabase } from "#db/connection.ts";
import { migrateFile } from "#db/migrate.ts";
import { clinicOf } from "#db/queries/clinic.ts";
import { addStaffRow } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { moveClock } from "#server/clinic/move-clock.ts";
import { openClinic } from "#server/clinic/open-clinic.ts";
import { machineNow, today } from "#server/clock.ts";
import { openSession } from "#server/sign-in/open-session.ts";
import { sessionOf } from "#server/sign-in/session-of.ts";
import { addDays } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { people } from "#tests/support/database.ts";
import { testFolder } from "#tests/support/folder.ts";

type Run = { readonly code: number; readonly stdout: string; readonly stderr: string };

const run = (file: string, ...args: string[]): Promise<Run> =>
  new Promise((resolve) => {
    const all = ["node_modules/tsx/dist/cli.mjs", "server/commands/demo-clock.ts", ...args];
    const env = { ...process.env, DATABASE_FILE: file };
    execFile(process.execPath, all, { env }, (error, stdout, stderr) =>
      resolve({ code: error === null ? 0 : Number(error.code), stdout, stderr }),
    );
  });

function clinicFile(file: string, isDemo: boolean): Database & Disposable {
  migrateFile(file);
  const db = openDatabase(file);
  // A zone without clock changes, so that days have 24 hours.
  const opening = { name: "Quillmere Tube Clinic", zone: "UTC", phone: "", isDemo };
  inTransaction(db, (tx) => {
    openClinic(tx, opening, machineNow());
    addStaffRow(tx, people.nurse);
  });
  return { ...db, [Symbol.dispose]: () => db.sqlite.close() };
}

describe("the clock of a demo", { timeout: 60_000 }, () => {
  it("moves on from where it stands, signs nobody out, and goes back", () => {
    using folder = testFolder();
    using db = clinicFile(folder.in("demo.sqlite"), true);
    const opened = { staffId: people.nurse.id, replaces: null };
    const token = inTransaction(db, (tx) => openSession(tx, opened, machineNow()));
    const began = today(db);
    moveClock(db, 7);
    moveClock(db, 7);
    expect(today(db)).toBe(addDays(began, 14));
    expect(sessionOf(db, token, machineNow())?.person.userName).toBe(people.nurse.userName);
    moveClock(db, "real");
    expect(clinicOf(db).clockOffsetMs).toBe(0);
  });

  it("npm run demo:clock says the clinic's new day", async () => {
    using folder = testFolder();
    const file = folder.in("demo.sqlite");
    using db = clinicFile(file, true);
    const began = today(db);
    const said = `The clinic's day is ${printDay(addDays(began, 7))}.\n`;
    expect(await run(file, "+7d")).toEqual({ code: 0, stdout: said, stderr: "" });
  });

  it.each([
    ["a clinic that is no demo", false, "+7d", "Only a demo's clock can be moved"],
    ["a distance without a unit", true, "7", "npm run demo:clock -- +7d"],
    ["a day before the real one", true, "-7d", "npm run demo:clock -- +7d"],
  ])("npm run demo:clock refuses %s and moves nothing", async (_, isDemo, text, sentence) => {
    using folder = testFolder();
    const file = folder.in("clinic.sqlite");
    using db = clinicFile(file, isDemo);
    const { code, stdout, stderr } = await run(file, text);
    expect({ code, stdout }).toEqual({ code: 1, stdout: "" });
    expect(stderr).toContain(sentence);
    expect(clinicOf(db).clockOffsetMs).toBe(0);
  });
});
