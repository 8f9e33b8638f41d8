import { describe, expect, it } from "vitest";
import { sessions, staff } from "#db/schema/staff.ts";
import { inTransaction } from "#db/transaction.ts";
import { openSession } from "#server/sign-in/open-session.ts";
import { sessionLeft } from "#server/sign-in/session-left.ts";
import { sessionOf } from "#server/sign-in/session-of.ts";
import { signOut } from "#server/sign-in/sign-out.ts";
import { touch } from "#server/sign-in/touch.ts";
import { type Instant, instant } from "#shared/day/instant.ts";
import { people, SEEDED_AT, testDatabase } from "#tests/support/database.ts";

const SECOND = 1000;
const MINUTE = 60 * SECOND;
const HOUR = 60 * MINUTE;
const since = (ms: number): Instant => instant(SEEDED_AT + ms);

/** A database in which the nurse has just signed in. */
function signedIn() {
  const db = testDatabase();
  const token = inTransaction(db, (tx) =>
    openSession(tx, { staffId: people.nurse.id, replaces: null }, SEEDED_AT),
  );
  return { db, token, [Symbol.dispose]: () => db[Symbol.dispose]() };
}

describe("a session", () => {
  it.each([
    [20 * MINUTE - 1, true],
    [20 * MINUTE, false],
  ])("with nothing done, %i ms after sign-in: %s", (ms, lasts) => {
    using at = signedIn();
    expect(sessionOf(at.db, at.token, since(ms)) !== null).toBe(lasts);
  });

  it("ends after ten hours however much is done", () => {
    using at = signedIn();
    for (let ms = 0; ms < 10 * HOUR; ms += 15 * MINUTE) {
      const session = sessionOf(at.db, at.token, since(ms));
      if (session === null) throw new Error(`ended after ${ms} ms`);
      touch(at.db, session, since(ms));
    }
    expect(sessionOf(at.db, at.token, since(10 * HOUR - 1))).not.toBeNull();
    expect(sessionOf(at.db, at.token, since(10 * HOUR))).toBeNull();
  });

  it("tells whole seconds to both ends", () => {
    using at = signedIn();
    const session = sessionOf(at.db, at.token, since(90 * SECOND));
    if (session === null) throw new Error("no session");
    expect(sessionLeft(session, since(90 * SECOND + 1))).toEqual({
      idleSeconds: 20 * 60 - 91,
      endsInSeconds: 10 * 3600 - 91,
    });
  });

  it.each([
    [30 * SECOND - 1, 0],
    [30 * SECOND, 30 * SECOND],
  ])("use %i ms after the last is stored as %i", (ms, stored) => {
    using at = signedIn();
    const session = sessionOf(at.db, at.token, since(ms));
    if (session === null) throw new Error("no session");
    touch(at.db, session, since(ms));
    expect(at.db.orm.select({ seen: sessions.lastSeenAt }).from(sessions).all()).toEqual([
      { seen: since(stored) },
    ]);
  });

  it("looking at it is no use", () => {
    using at = signedIn();
    sessionOf(at.db, at.token, since(19 * MINUTE));
    expect(sessionOf(at.db, at.token, since(20 * MINUTE))).toBeNull();
  });

  it("ends with sign-out, and signing out twice is no fault", () => {
    using at = signedIn();
    signOut(at.db, at.token);
    signOut(at.db, at.token);
    expect(sessionOf(at.db, at.token, SEEDED_AT)).toBeNull();
  });

  it("ends when the account is closed", () => {
    using at = signedIn();
    at.db.orm.update(staff).set({ closedAt: SEEDED_AT }).run();
    expect(sessionOf(at.db, at.token, SEEDED_AT)).toBeNull();
  });

  it.each(["", "x", "a".repeat(5000)])("a made-up token is nobody's", (token) => {
    using at = signedIn();
    expect(sessionOf(at.db, token, SEEDED_AT)).toBeNull();
  });

  it("sessions that are over are swept away by the next sign-in", () => {
    using at = signedIn();
    inTransaction(at.db, (tx) =>
      openSession(tx, { staffId: people.lead.id, replaces: null }, since(10 * HOUR)),
    );
    expect(at.db.orm.select({ who: sessions.staffId }).from(sessions).all()).toEqual([
      { who: people.lead.id },
    ]);
  });
});
