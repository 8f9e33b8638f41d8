import { describe, expect, it } from "vitest";
import { signInRefusals } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { countAttempt, refusedNow, type Trier, takeBackAttempt } from "#server/sign-in/attempts.ts";
import { type Instant, instant } from "#shared/day/instant.ts";
import { SEEDED_AT, testDatabase } from "#tests/support/database.ts";

const MINUTE = 60_000;
const since = (ms: number): Instant => instant(SEEDED_AT + ms);
const tansy: Trier = { userName: "tansy", address: "192.0.2.7" };

const fail = (db: Database, trier: Trier, at: Instant): void =>
  inTransaction(db, (tx) => countAttempt(tx, trier, at));
const succeed = (db: Database, trier: Trier, at: Instant): void =>
  inTransaction(db, (tx) => {
    countAttempt(tx, trier, at);
    takeBackAttempt(tx, trier);
  });
const refusedUntil = (db: Database, trier: Trier, at: Instant): Instant | null =>
  inTransaction(db, (tx) => refusedNow(tx, trier, at));

/** That many names tried from one address. */
const guess = (db: Database, times: number): void => {
  for (let n = 0; n < times; n += 1) fail(db, { ...tansy, userName: `guess${n}` }, SEEDED_AT);
};

describe("wrong sign-ins at one account", () => {
  it.each([
    [4, 0],
    [5, 1],
    [6, 2],
    [7, 4],
    [8, 8],
    [9, 15],
    [60, 15],
  ])("%i in a row wait %i minutes, wherever they come from and never longer", (failures, minutes) => {
    using db = testDatabase();
    for (let n = 0; n < failures; n += 1) fail(db, { ...tansy, address: `198.51.100.${n}` }, SEEDED_AT);
    const here = { ...tansy, address: "192.0.2.8" };
    const end = minutes === 0 ? null : since(minutes * MINUTE);
    expect(refusedUntil(db, here, SEEDED_AT)).toBe(end);
    expect(refusedUntil(db, here, since(minutes * MINUTE))).toBeNull();
  });

  it("end at a whole minute, as a clock tells it", () => {
    using db = testDatabase();
    for (let n = 0; n < 5; n += 1) fail(db, tansy, since(1));
    expect(refusedUntil(db, tansy, since(2))).toBe(since(2 * MINUTE));
  });

  it("do not hold up another account at another address", () => {
    using db = testDatabase();
    for (let n = 0; n < 9; n += 1) fail(db, tansy, SEEDED_AT);
    expect(refusedUntil(db, { userName: "lorne", address: "192.0.2.8" }, SEEDED_AT)).toBeNull();
  });

  it("are forgotten with a right one", () => {
    using db = testDatabase();
    for (let n = 0; n < 4; n += 1) fail(db, tansy, SEEDED_AT);
    succeed(db, tansy, SEEDED_AT);
    for (let n = 0; n < 4; n += 1) fail(db, tansy, SEEDED_AT);
    expect(refusedUntil(db, tansy, SEEDED_AT)).toBeNull();
  });

  it("are forgotten after two quiet hours, not before", () => {
    using db = testDatabase();
    for (let n = 0; n < 4; n += 1) fail(db, tansy, SEEDED_AT);
    fail(db, { ...tansy, userName: "lorne" }, since(120 * MINUTE));
    const counts = () =>
      db.orm.select({ failures: signInRefusals.failures }).from(signInRefusals).all().flatMap(Object.values);
    expect(counts().toSorted()).toEqual([1, 4, 5]);
    fail(db, { ...tansy, userName: "lorne" }, since(120 * MINUTE + 1));
    expect(counts().toSorted()).toEqual([2, 6]);
  });
});

describe("wrong sign-ins from one address", () => {
  it("make it wait after thirty names, and other addresses go on", () => {
    using db = testDatabase();
    guess(db, 29);
    expect(refusedUntil(db, tansy, SEEDED_AT)).toBeNull();
    fail(db, { ...tansy, userName: "guess" }, SEEDED_AT);
    expect(refusedUntil(db, tansy, SEEDED_AT)).toBe(since(MINUTE));
    expect(refusedUntil(db, { ...tansy, address: "192.0.2.8" }, SEEDED_AT)).toBeNull();
  });

  it("are not wiped by a right one: it takes back only itself", () => {
    using db = testDatabase();
    guess(db, 29);
    succeed(db, tansy, SEEDED_AT);
    expect(refusedUntil(db, tansy, SEEDED_AT)).toBeNull();
    fail(db, { ...tansy, userName: "guess" }, SEEDED_AT);
    expect(refusedUntil(db, tansy, SEEDED_AT)).toBe(since(MINUTE));
  });

  it("a right one alone leaves nothing behind", () => {
    using db = testDatabase();
    succeed(db, tansy, SEEDED_AT);
    expect(db.orm.select().from(signInRefusals).all()).toEqual([]);
  });
});
