import { copyFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { backUp } from "#db/backup.ts";
import { openDatabase } from "#db/connection.ts";
import { migrateFile } from "#db/migrate.ts";
import { addStaffRow, allStaff } from "#db/queries/staff.ts";
import { inTransaction } from "#db/transaction.ts";
import { people } from "#tests/support/database.ts";
import { testFolder } from "#tests/support/folder.ts";

describe("a backup", () => {
  it("taken while the database is open restores what was saved, and only that", async () => {
    using folder = testFolder();
    const file = folder.in("clinic.sqlite");
    migrateFile(file);
    const db = openDatabase(file);
    inTransaction(db, (tx) => addStaffRow(tx, people.nurse));
    const copy = folder.in("copy.sqlite");
    const backup = await backUp(db, copy);
    expect(backup.pages).toBeGreaterThan(1);
    inTransaction(db, (tx) => addStaffRow(tx, people.lead));
    db.sqlite.close();

    expect(readdirSync(folder.path).toSorted()).toEqual(["clinic.sqlite", "copy.sqlite"]);
    copyFileSync(copy, file);
    const restored = openDatabase(file);
    expect(allStaff(restored)).toEqual([people.nurse]);
    restored.sqlite.close();
  });

  it("is never written over another file", async () => {
    using folder = testFolder();
    const file = folder.in("clinic.sqlite");
    migrateFile(file);
    const db = openDatabase(file);
    await expect(backUp(db, file)).rejects.toThrow("backup-exists");
    db.sqlite.close();
  });
});
