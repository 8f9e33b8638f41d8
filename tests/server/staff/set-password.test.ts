import { describe, expect, it } from "vitest";
import { inTransaction } from "#db/transaction.ts";
import { machineNow } from "#server/clock.ts";
import { hashPassword } from "#server/sign-in/password.ts";
import { sessionOf } from "#server/sign-in/session-of.ts";
import { signIn } from "#server/sign-in/sign-in.ts";
import { setPassword } from "#server/staff/set-password.ts";
import { emptyDatabase, PASSWORD, people, testDatabase } from "#tests/support/database.ts";
import { bringIn, exportedLines } from "#tests/support/record-file.ts";
import { laterRefusalsOf, refusalsOf } from "#tests/support/refusal.ts";

const NEW = "nine patient otters";
const { userName } = people.lead;
const trying = (password: string) => ({ userName, password, address: "127.0.0.1", replaces: null });

describe("a new password", () => {
  it("opens the account, the old one no more, and ends the sessions of before", async () => {
    using db = testDatabase();
    const before = await signIn(db, trying(PASSWORD), machineNow());
    const passwordHash = await hashPassword(NEW);
    inTransaction(db, (tx) => setPassword(tx, { userName, passwordHash }));
    expect(sessionOf(db, before, machineNow())).toBeNull();
    expect(await laterRefusalsOf(signIn(db, trying(PASSWORD), machineNow()))).toMatchObject([
      { code: "sign-in-wrong" },
    ]);
    expect(sessionOf(db, await signIn(db, trying(NEW), machineNow()), machineNow())?.person.role).toBe(
      "lead",
    );
  });

  it("is given to an open account only", () => {
    using db = testDatabase();
    const set = (name: string) =>
      refusalsOf(() => inTransaction(db, (tx) => setPassword(tx, { userName: name, passwordHash: "x" })));
    expect(set("nobody")).toMatchObject([{ code: "user-name-unknown", args: { text: "nobody" } }]);
    db.sqlite.exec("update staff set closed_at = created_at where user_name = 'corin'");
    expect(set("corin")).toMatchObject([{ code: "user-name-unknown" }]);
  });
});

describe("an account that was brought in", () => {
  it("is shut to everybody, also to an empty password, until one is set", async () => {
    using first = testDatabase();
    using second = emptyDatabase();
    bringIn(second, exportedLines(first));
    for (const password of ["", PASSWORD])
      expect(await laterRefusalsOf(signIn(second, trying(password), machineNow()))).toMatchObject([
        { code: "sign-in-wrong" },
      ]);
    const passwordHash = await hashPassword(NEW);
    inTransaction(second, (tx) => setPassword(tx, { userName, passwordHash }));
    expect(await signIn(second, trying(NEW), machineNow())).toHaveLength(43);
  });

  it("leaves no trace of its password in the file", () => {
    using db = testDatabase();
    expect(exportedLines(db).join("\n")).not.toMatch(/argon2|password/);
  });
});
