import { describe, expect, it } from "vitest";
import { addStaffRow, closeStaffRow } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { clinicView } from "#server/clinic-view.ts";
import { newId } from "#server/ids.ts";
import { changeDraft, dropDraft, openDraft, viewDraft } from "#server/protocol/draft.ts";
import { protocolStory } from "#server/protocol/protocol-story.ts";
import { signDraft } from "#server/protocol/sign-draft.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { PASSWORD, people, SEEDED_AT, testDatabase } from "#tests/support/database.ts";
import { laterRefusalsOf, refusalsOf } from "#tests/support/refusal.ts";

const asked =
  (days: number) =>
  (protocol: Protocol): Protocol => ({ ...protocol, escalation: { daysPastTarget: days, source: "ours" } });

type Who = { readonly id: string };
type Signing = { readonly staff?: Who; readonly revision?: number; readonly password?: string };
type Drafting = { readonly staff?: Who; readonly revision?: number; readonly days?: number };

const draft = (db: Database, { staff = people.lead, revision = 0, days = 5 }: Drafting = {}) =>
  changeDraft(
    { db, staff },
    { actId: newId(), revision, input: { days }, change: asked(days), note: "asked sooner" },
  );
const sign = (db: Database, { staff = people.physician, revision = 1, password = PASSWORD }: Signing = {}) =>
  signDraft({ db, staff }, { actId: newId(), revision, password });

/** A second physician who signs. */
function secondApprover(db: Database): Who {
  const second = { ...people.physician, id: "staff-second", userName: "quill", fullName: "Quill Secondhand" };
  inTransaction(db, (tx) => addStaffRow(tx, second));
  return second;
}

describe("a draft of the table", () => {
  it("is begun from what stands, holds its authors, and changes nothing that stands", () => {
    using db = testDatabase();
    const before = viewProtocol(db);
    expect(viewDraft(db)).toEqual({ stands: before.protocol, draft: null });
    expect(draft(db)).toEqual({ revision: 1 });
    expect(draft(db, { staff: people.physician, revision: 1, days: 6 })).toEqual({ revision: 2 });
    expect(viewDraft(db).draft).toMatchObject({
      base: 1,
      revision: 2,
      note: "asked sooner",
      authors: ["Lorne Leadbeater", "Petra Physick"],
      protocol: { version: 2, approved: null, escalation: { daysPastTarget: 6 } },
    });
    expect(viewProtocol(db)).toEqual(before);
  });

  it("that somebody changed meanwhile is not changed, dropped or signed as it was seen", async () => {
    using db = testDatabase();
    draft(db);
    draft(db, { revision: 1 });
    const seen = { actId: newId(), revision: 1 };
    expect(refusalsOf(() => draft(db, { revision: 1 }))).toMatchObject([{ code: "draft-changed" }]);
    expect(refusalsOf(() => draft(db, { revision: 0 }))).toMatchObject([{ code: "draft-changed" }]);
    expect(refusalsOf(() => dropDraft({ db, staff: people.lead }, seen))).toMatchObject([
      { code: "draft-changed" },
    ]);
    expect(await laterRefusalsOf(sign(db))).toMatchObject([{ code: "draft-changed" }]);
    expect(openDraft(db)?.revision).toBe(2);
  });

  it("dropped, is gone, and what stands stands", () => {
    using db = testDatabase();
    draft(db);
    const dropping = { actId: newId(), revision: 1 };
    dropDraft({ db, staff: people.lead }, dropping);
    dropDraft({ db, staff: people.lead }, dropping);
    expect(openDraft(db)).toBeNull();
    expect(
      refusalsOf(() => dropDraft({ db, staff: people.lead }, { ...dropping, actId: newId() })),
    ).toMatchObject([{ code: "draft-missing" }]);
  });
});

describe("signing", () => {
  it("makes the draft the next version, with who drafted and who approved it; EXAMPLE goes", async () => {
    using db = testDatabase();
    draft(db);
    const { today } = clinicView(db);
    expect(await sign(db)).toEqual({ version: 2, by: "Petra Physick", on: today, alone: false, tubes: 0 });
    expect(viewProtocol(db).protocol).toMatchObject({
      version: 2,
      approved: { by: "Petra Physick", on: today },
      escalation: { daysPastTarget: 5 },
    });
    expect(openDraft(db)).toBeNull();
    expect(clinicView(db).isExample).toBe(false);
    expect(protocolStory(db).versions).toMatchObject([
      { version: 2, approvedBy: "Petra Physick", draftedBy: ["Lorne Leadbeater"], note: "asked sooner" },
      { version: 1, approvedBy: null, draftedBy: [] },
    ]);
  });

  it("is not for whoever changed the draft, while another approver can", async () => {
    using db = testDatabase();
    const second = secondApprover(db);
    draft(db, { staff: people.physician });
    expect(await laterRefusalsOf(sign(db))).toMatchObject([
      { code: "signed-by-author", args: { others: "Quill Secondhand" } },
    ]);
    expect(await sign(db, { staff: second })).toMatchObject({ alone: false });
  });

  it("is for its author where the clinic has no other approver, and says so for ever", async () => {
    using db = testDatabase();
    const second = secondApprover(db);
    inTransaction(db, (tx) => closeStaffRow(tx, second.id, SEEDED_AT));
    draft(db, { staff: people.physician });
    expect(await sign(db)).toMatchObject({ alone: true });
    expect(protocolStory(db).versions[0]).toMatchObject({
      approvedAlone: true,
      draftedBy: ["Petra Physick"],
    });
  });

  it("by two at once is done by one; the other is told that there is no draft any more", async () => {
    using db = testDatabase();
    const second = secondApprover(db);
    draft(db);
    const both = await Promise.allSettled([sign(db), sign(db, { staff: second })]);
    expect(both.map(({ status }) => status).toSorted()).toEqual(["fulfilled", "rejected"]);
    expect(viewProtocol(db).protocol.version).toBe(2);
    expect(await laterRefusalsOf(sign(db))).toMatchObject([{ code: "draft-missing" }]);
  });

  it("asks for the signer's own password, and is refused to who is no approver", async () => {
    using db = testDatabase();
    draft(db);
    expect(await laterRefusalsOf(sign(db, { password: "another" }))).toMatchObject([
      { code: "password-wrong", field: "password" },
    ]);
    for (const staff of [people.lead, people.nurse])
      expect(await laterRefusalsOf(sign(db, { staff }))).toMatchObject([{ code: "not-allowed" }]);
    expect(viewProtocol(db).protocol.version).toBe(1);
  });

  it("of a draft that changes no row approves the table as it stands; of an approved one there is nothing to sign", async () => {
    using db = testDatabase();
    const same = (protocol: Protocol): Protocol => protocol;
    const begin = () =>
      changeDraft({ db, staff: people.lead }, { actId: newId(), revision: 0, input: newId(), change: same });
    begin();
    expect(await sign(db)).toMatchObject({ version: 2 });
    begin();
    expect(await laterRefusalsOf(sign(db))).toMatchObject([{ code: "draft-without-change" }]);
  });
});
