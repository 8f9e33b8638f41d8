import { describe, expect, it } from "vitest";
import { drafts } from "#db/schema/drafts.ts";
import { machineNow } from "#server/clock.ts";
import { instant } from "#shared/day/instant.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";

const DAY_MS = 86_400_000;
const key = { form: "reading", subject: "tube-1" };
const typed = (note: string) => ({ actId: "a".repeat(22), texts: { note } });

describe("a draft", () => {
  it("comes back as it was typed, the last one only", async () => {
    using db = testDatabase();
    const { draft } = callerAs(db, people.nurse);
    await draft.save({ ...key, content: typed("35 ml") });
    await draft.save({ ...key, content: typed(" 35 ml, <b>שלום</b> \u0000") });
    expect(await draft.load(key)).toEqual(typed(" 35 ml, <b>שלום</b> \u0000"));
    expect(db.orm.select().from(drafts).all()).toHaveLength(1);
  });

  it("is one for each form and subject, and gone when it is dropped", async () => {
    using db = testDatabase();
    const { draft } = callerAs(db, people.nurse);
    await draft.save({ ...key, content: typed("a") });
    await draft.save({ ...key, subject: "", content: typed("b") });
    await draft.save({ ...key, form: "exchange", content: typed("c") });
    await draft.drop(key);
    expect(await draft.load(key)).toBeNull();
    expect(await draft.load({ ...key, subject: "" })).toEqual(typed("b"));
    expect(await draft.load({ ...key, form: "exchange" })).toEqual(typed("c"));
  });

  it("is nobody else's", async () => {
    using db = testDatabase();
    await callerAs(db, people.nurse).draft.save({ ...key, content: typed("mine") });
    const lead = callerAs(db, people.lead);
    expect(await lead.draft.load(key)).toBeNull();
    await lead.draft.drop(key);
    expect(await callerAs(db, people.nurse).draft.load(key)).toEqual(typed("mine"));
  });

  it.each([
    [7 * DAY_MS - 60_000, typed("old")],
    [7 * DAY_MS, null],
  ])("%i ms old", async (age, found) => {
    using db = testDatabase();
    const savedAt = instant(machineNow() - age);
    const row = { ...key, staffId: people.nurse.id, content: typed("old"), savedAt };
    db.orm.insert(drafts).values(row).run();
    expect(await callerAs(db, people.nurse).draft.load(key)).toEqual(found);
  });

  it("of anybody goes after seven days when another is saved", async () => {
    using db = testDatabase();
    const savedAt = instant(machineNow() - 7 * DAY_MS);
    db.orm
      .insert(drafts)
      .values({ ...key, staffId: people.lead.id, content: typed("old"), savedAt })
      .run();
    await callerAs(db, people.nurse).draft.save({ ...key, content: typed("new") });
    expect(db.orm.select({ who: drafts.staffId }).from(drafts).all()).toEqual([{ who: people.nurse.id }]);
  });

  it("that another version wrote otherwise is no draft", async () => {
    using db = testDatabase();
    const row = { ...key, staffId: people.nurse.id, content: { fields: [] }, savedAt: machineNow() };
    db.orm.insert(drafts).values(row).run();
    expect(await callerAs(db, people.nurse).draft.load(key)).toBeNull();
  });
});
