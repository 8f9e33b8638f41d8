import { describe, expect, it } from "vitest";
import { clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { setTelephone } from "#server/clinic/set-telephone.ts";
import { viewClinic } from "#server/clinic/view-clinic.ts";
import { newId } from "#server/ids.ts";
import { whoSawWhat } from "#server/lists/who-saw-what.ts";
import { takeHome } from "#server/tubes/take-home.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

const set = (db: Database, phone: string, seen: string, actId = newId()) =>
  setTelephone({ db, staff: people.lead }, { actId, texts: { phone }, seen });

describe("the clinic's telephone", () => {
  it("stands on what goes home from then on, with who set it, from what to what", () => {
    using db = testDatabase();
    expect(takeHome(db).clinic.phone).toBe("");
    expect(set(db, "555 0100", "")).toEqual({ before: "", phone: "555 0100" });
    set(db, "555 0199 ext 2", "555 0100");
    expect(takeHome(db).clinic.phone).toBe("555 0199 ext 2");
    const { phone, changes } = viewClinic(db);
    expect(phone).toBe("555 0199 ext 2");
    expect(changes.map(({ who, before, after }) => [who, before.phone, after.phone])).toEqual([
      ["Lorne Leadbeater", "555 0100", "555 0199 ext 2"],
      ["Lorne Leadbeater", "", "555 0100"],
    ]);
    expect(whoSawWhat(db).acts.rows.map(({ command, who }) => [command, who])).toEqual([
      ["clinic: telephone", "Lorne Leadbeater"],
      ["clinic: telephone", "Lorne Leadbeater"],
    ]);
  });

  it("is set once by an act that is sent twice, and not at all where it stays the same", () => {
    using db = testDatabase();
    const actId = newId();
    expect(set(db, "555 0100", "", actId)).toEqual(set(db, "555 0100", "", actId));
    set(db, "555 0100", "555 0100");
    expect(viewClinic(db).changes).toHaveLength(1);
  });

  it("is refused where somebody set another meanwhile, and where it is no number; what stood stands", () => {
    using db = testDatabase();
    set(db, "555 0100", "");
    expect(refusalsOf(() => set(db, "555 0111", ""))).toMatchObject([
      { code: "changed-meanwhile", args: { entries: "555 0100" } },
    ]);
    expect(refusalsOf(() => set(db, "the ward", "555 0100"))).toMatchObject([
      { code: "clinic-telephone-not-understood", field: "phone" },
    ]);
    expect(clinicOf(db).phone).toBe("555 0100");
  });

  it("is the lead's to see and to set", async () => {
    using db = testDatabase();
    const about = { actId: newId(), texts: { phone: "555 0100" }, seen: "" };
    for (const person of [people.nurse, people.caller, people.physician]) {
      await expect(callerAs(db, person).clinic.telephone(about)).rejects.toMatchObject({ code: "FORBIDDEN" });
      await expect(callerAs(db, person).clinic.view()).rejects.toMatchObject({ code: "FORBIDDEN" });
    }
    expect(await callerAs(db, people.lead).clinic.telephone(about)).toMatchObject({ phone: "555 0100" });
  });
});
