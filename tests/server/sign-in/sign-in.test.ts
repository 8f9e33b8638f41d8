import { describe, expect, it } from "vitest";
import { clinic } from "#db/schema/clinic.ts";
import { sessions, signInRefusals, staff } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { sessionOf } from "#server/sign-in/session-of.ts";
import { type SignInAttempt, signIn } from "#server/sign-in/sign-in.ts";
import { type Instant, instant } from "#shared/day/instant.ts";
import { PASSWORD, people, SEEDED_AT, testDatabase } from "#tests/support/database.ts";
import { laterRefusalsOf } from "#tests/support/refusal.ts";

const MINUTE = 60_000;
const since = (ms: number): Instant => instant(SEEDED_AT + ms);

const right: SignInAttempt = {
  userName: "tansy",
  password: PASSWORD,
  address: "192.0.2.7",
  replaces: null,
};
const wrong = { ...right, password: "seven loud herons" };

async function tryTimes(db: Database, times: number, attempt: (n: number) => SignInAttempt): Promise<void> {
  for (let n = 0; n < times; n += 1) await laterRefusalsOf(signIn(db, attempt(n), SEEDED_AT));
}

describe("a sign-in that is right", () => {
  it.each(["tansy", " Tansy ", "TANSY"])("opens a session for the name typed as %j", async (userName) => {
    using db = testDatabase();
    const token = await signIn(db, { ...right, userName }, SEEDED_AT);
    expect(sessionOf(db, token, SEEDED_AT)?.person).toEqual({
      id: people.nurse.id,
      userName: "tansy",
      fullName: people.nurse.fullName,
      role: "nurse",
      isApprover: false,
    });
  });

  it("stores no token, only a hash of it", async () => {
    using db = testDatabase();
    const token = await signIn(db, right, SEEDED_AT);
    expect(Buffer.from(token, "base64url")).toHaveLength(32);
    const stored = db.orm.select().from(sessions).all();
    expect(stored).toHaveLength(1);
    expect(JSON.stringify(stored)).not.toContain(token);
  });

  it("gives a new token and ends the one that the browser held", async () => {
    using db = testDatabase();
    const first = await signIn(db, right, SEEDED_AT);
    const second = await signIn(db, { ...right, replaces: first }, SEEDED_AT);
    expect(second).not.toBe(first);
    expect(sessionOf(db, first, SEEDED_AT)).toBeNull();
    expect(sessionOf(db, second, SEEDED_AT)).not.toBeNull();
  });

  it("takes letters that two keyboards compose differently as the same password", async () => {
    using db = testDatabase();
    // "seven quiet herons" with the ligature-free fullwidth "s" (U+FF53) in front: NFKC makes the plain letter of it.
    const token = await signIn(db, { ...right, password: `\uFF53${PASSWORD.slice(1)}` }, SEEDED_AT);
    expect(sessionOf(db, token, SEEDED_AT)).not.toBeNull();
  });
});

describe("a sign-in that is wrong", () => {
  it.each([
    ["a wrong password", wrong],
    ["a name without an account", { ...right, userName: "nobody" }],
    ["an empty password", { ...right, password: "" }],
    ["a very long password", { ...right, password: "x".repeat(100_000) }],
    ["an empty name", { ...right, userName: "" }],
  ])("says the same for %s", async (_, attempt) => {
    using db = testDatabase();
    expect(await laterRefusalsOf(signIn(db, attempt, SEEDED_AT))).toEqual([{ code: "sign-in-wrong" }]);
    expect(db.orm.select().from(sessions).all()).toEqual([]);
  });

  it("says the same for an account that was closed", async () => {
    using db = testDatabase();
    db.orm.update(staff).set({ closedAt: SEEDED_AT }).run();
    expect(await laterRefusalsOf(signIn(db, right, SEEDED_AT))).toEqual([{ code: "sign-in-wrong" }]);
  });

  it("leaves no name and no password in the table of refusals", async () => {
    using db = testDatabase();
    await tryTimes(db, 1, () => ({ ...wrong, userName: PASSWORD }));
    expect(JSON.stringify(db.orm.select().from(signInRefusals).all())).not.toContain("herons");
  });
});

describe("after wrong sign-ins", () => {
  it("four are free, the fifth makes the account wait until a time that is told", async () => {
    using db = testDatabase();
    await tryTimes(db, 4, () => wrong);
    expect(await signIn(db, right, SEEDED_AT)).toBeTypeOf("string");
    await tryTimes(db, 5, () => wrong);
    // 5 January 2026 08:00 UTC, and London is on UTC: one minute later.
    expect(await laterRefusalsOf(signIn(db, right, SEEDED_AT))).toEqual([
      { code: "sign-in-refused", args: { until: "08:01" } },
    ]);
    expect(await signIn(db, right, since(MINUTE))).toBeTypeOf("string");
  });

  it("eight guesses sent at once count as eight", async () => {
    using db = testDatabase();
    const answers = await Promise.all(
      Array.from({ length: 8 }, () => laterRefusalsOf(signIn(db, wrong, SEEDED_AT))),
    );
    const codes = answers.map(([refusal]) => refusal?.code);
    expect(codes.filter((code) => code === "sign-in-wrong")).toHaveLength(5);
    expect(codes.filter((code) => code === "sign-in-refused")).toHaveLength(3);
  });

  it("a try while refused is not counted, so waiting ends", async () => {
    using db = testDatabase();
    await tryTimes(db, 50, () => wrong);
    expect(await signIn(db, right, since(MINUTE))).toBeTypeOf("string");
  });

  it("a demo tells the time by the clock that its pages show", async () => {
    using db = testDatabase();
    db.orm
      .update(clinic)
      .set({ isDemo: true, clockOffsetMs: 90 * MINUTE })
      .run();
    await tryTimes(db, 5, () => wrong);
    expect((await laterRefusalsOf(signIn(db, right, SEEDED_AT)))[0]?.args).toEqual({ until: "09:31" });
  });
});
