import { describe, expect, it } from "vitest";
import { newId } from "#server/ids.ts";
import { closeAccountByForm } from "#server/staff/close-account-form.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

describe("what a form is read beside", () => {
  it("names the clinic's clock and who may take a step, and nothing of how they sign in", async () => {
    using db = testDatabase();
    const beside = await callerAs(db, people.nurse).record.beside();
    expect(beside.zone).toBe("Europe/London");
    expect(beside.staff.map((person) => Object.keys(person).toSorted())).toEqual(
      Object.keys(people).map(() => ["fullName", "id", "role"]),
    );
  });

  it("leaves out closed accounts", async () => {
    using db = testDatabase();
    const lead = callerAs(db, people.lead);
    const texts = { passTo: "any nurse" };
    await lead.staff.close({ actId: newId(), closes: people.caller.id, texts });
    expect((await lead.record.beside()).staff.map(({ fullName }) => fullName)).toEqual([
      "Lorne Leadbeater",
      "Petra Physick",
      "Tansy Nurseworth",
    ]);
  });
});

describe("closing an account by its form", () => {
  it("refuses whom the list does not offer: the leaving person's own name", () => {
    using db = testDatabase();
    const closing = { actId: newId(), closes: people.caller.id, texts: { passTo: people.caller.id } };
    expect(refusalsOf(() => closeAccountByForm({ db, staff: people.lead }, closing))).toMatchObject([
      { code: "choice-unknown", field: "passTo" },
    ]);
  });
});

describe("the protocol in force", () => {
  it("is the example until somebody approves it, with the clinic's open days", async () => {
    using db = testDatabase();
    const { protocol, calendar } = await callerAs(db, people.caller).protocol.view();
    expect(protocol).toMatchObject({ version: 1, approved: null });
    expect(calendar.openWeekdays).toEqual([1, 2, 3, 4, 5]);
  });
});
