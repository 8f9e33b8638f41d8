import { describe, expect, it } from "vitest";
import { setProtocolDraft } from "#db/queries/protocol-draft.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { PROTOCOL_SHAPE } from "#shared/protocol/protocol.ts";
import { typedRow } from "#shared/protocol/rows/rows-of.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, SEEDED_AT, testDatabase } from "#tests/support/database.ts";
import { frozenEvents } from "#tests/support/frozen.ts";

const actOf = (n: number): string => `act-of-the-draft-${n}`;

const asLead = (db: Database) => callerAs(db, people.lead).protocol;

const nephrostomy = (texts: Texts): Texts => ({
  ...typedRow(exampleProtocol, "intervals/nephrostomy"),
  ...texts,
});
const shorter = nephrostomy({ earliest: "49", target: "63", latest: "77" });
const address = "intervals/nephrostomy";

const draftedDays = async (db: Database) => {
  const { draft } = await asLead(db).draft();
  const row = draft?.protocol.intervals.find(({ id }) => id === "nephrostomy");
  return row && [row.earliest, row.target, row.latest];
};

describe("a row of the draft", () => {
  it("is drafted by the lead, who stands as its author; what stands is as it was", async () => {
    const db = testDatabase();
    const answer = await asLead(db).changeRow({ actId: actOf(1), revision: 0, address, texts: shorter });
    expect(answer).toEqual({ revision: 1, address });
    const { stands, draft } = await asLead(db).draft();
    expect(draft).toMatchObject({ revision: 1, base: 1, authors: [people.lead.fullName] });
    expect(await draftedDays(db)).toEqual([49, 63, 77]);
    expect(stands.intervals).toEqual(exampleProtocol.intervals);
  });

  it("with a target after the latest is refused at its field, and no draft begins", async () => {
    const db = testDatabase();
    const refused = asLead(db).changeRow({
      actId: actOf(1),
      revision: 0,
      address,
      texts: nephrostomy({ target: "95" }),
    });
    await expect(refused).rejects.toMatchObject({
      cause: { refusals: [{ code: "window-out-of-order", field: "target" }] },
    });
    expect((await asLead(db).draft()).draft).toBeNull();
  });

  it("sent twice is changed once; seen before somebody else's change it is refused", async () => {
    const db = testDatabase();
    const act = { actId: actOf(1), revision: 0, address, texts: shorter };
    expect(await asLead(db).changeRow(act)).toEqual(await asLead(db).changeRow(act));
    const late = asLead(db).changeRow({ ...act, actId: actOf(2) });
    await expect(late).rejects.toMatchObject({ cause: { refusals: [{ code: "draft-changed" }] } });
  });

  it("is dropped, added and named anew, one change after the other", async () => {
    const db = testDatabase();
    const lead = asLead(db);
    expect(await lead.dropRow({ actId: actOf(1), revision: 0, address: "balloon" })).toEqual({
      revision: 1,
      address: null,
    });
    const flag = { id: "feels hot", level: "same day", says: "feels hot", source: "CP" };
    expect(await lead.changeRow({ actId: actOf(2), revision: 1, address: "redFlags", texts: flag })).toEqual({
      revision: 2,
      address: "redFlags/feels hot",
    });
    expect(
      await lead.changeRow({
        actId: actOf(3),
        revision: 2,
        address: "redFlags/feels hot",
        texts: { ...flag, id: "hot" },
      }),
    ).toEqual({ revision: 3, address: "redFlags/hot" });
    const { draft } = await lead.draft();
    expect(draft?.protocol).toEqual({
      ...exampleProtocol,
      version: 2,
      balloon: null,
      redFlags: [
        ...exampleProtocol.redFlags,
        { id: "hot", level: "same day", says: "feels hot", untilReached: null, raisedBy: [], source: "CP" },
      ],
    });
  });

  it("of a question names a red flag that the table has, once its row is added", async () => {
    const db = testDatabase();
    const lead = asLead(db);
    const question = "calls.questions/skin";
    const texts = { ...typedRow(exampleProtocol, question), redFlag: "feels hot" };
    await expect(
      lead.changeRow({ actId: actOf(1), revision: 0, address: question, texts }),
    ).rejects.toMatchObject({
      cause: { refusals: [{ code: "red-flag-not-in-table", field: "redFlag" }] },
    });
    const flag = { id: "feels hot", level: "same day", says: "feels hot", source: "CP" };
    await lead.changeRow({ actId: actOf(2), revision: 0, address: "redFlags", texts: flag });
    await lead.changeRow({ actId: actOf(3), revision: 1, address: question, texts });
    const dropped = lead.dropRow({ actId: actOf(4), revision: 2, address: "redFlags/feels hot" });
    await expect(dropped).rejects.toMatchObject({
      cause: { refusals: [{ code: "red-flag-not-in-table", args: { row: "skin", text: "feels hot" } }] },
    });
    const { draft } = await lead.draft();
    expect(draft?.protocol.calls?.questions.find(({ id }) => id === "skin")?.redFlag).toBe("feels hot");
  });

  it("is read where an earlier release left the draft open, and can be changed on", async () => {
    const db = testDatabase();
    const {
      version: _version,
      approved: _approved,
      ...rows
    } = frozenEvents("0.6.0").protocol as Record<string, unknown>;
    const left = {
      rows,
      revision: 4,
      base: 1,
      note: "",
      authors: [people.lead.id],
      updatedAt: SEEDED_AT,
    };
    inTransaction(db, (tx) => setProtocolDraft(tx, left));
    const { draft } = await asLead(db).draft();
    expect(draft?.protocol).toMatchObject({ shape: PROTOCOL_SHAPE, calls: { questions: [], rungs: [] } });
    const texts = typedRow(exampleProtocol, "calls.questions/fever");
    const added = { actId: actOf(1), revision: 4, address: "calls.questions", texts };
    expect(await asLead(db).changeRow(added)).toEqual({ revision: 5, address: "calls.questions/fever" });
  });

  it("has the reason of the whole draft beside it", async () => {
    const db = testDatabase();
    await asLead(db).changeRow({ actId: actOf(1), revision: 0, address, texts: shorter });
    await asLead(db).noteDraft({
      actId: actOf(2),
      revision: 1,
      texts: { note: " Shorter since the audit. " },
    });
    expect((await asLead(db).draft()).draft?.note).toBe("Shorter since the audit.");
    expect(await draftedDays(db)).toEqual([49, 63, 77]);
  });
});

describe("the draft as a file", () => {
  it("exported, mended and brought back is the draft; nobody else's draft is written over", async () => {
    const db = testDatabase();
    const lead = asLead(db);
    const file = await lead.file();
    const mended = file.replace(/(intervals\/nephrostomy,[^,]*,target,)77/, "$163");
    const bytes = new TextEncoder().encode(
      mended.replace(/(intervals\/nephrostomy,[^,]*,earliest,)63/, "$149"),
    );
    expect(await lead.bringFile({ actId: actOf(1), revision: 0, bytes })).toEqual({ ok: true, revision: 1 });
    expect(await draftedDays(db)).toEqual([49, 63, 90]);
    const late = lead.bringFile({ actId: actOf(2), revision: 0, bytes });
    await expect(late).rejects.toMatchObject({ cause: { refusals: [{ code: "draft-changed" }] } });
  });

  it("with a target after the latest is told by its line, and nothing of it is taken", async () => {
    const db = testDatabase();
    const lead = asLead(db);
    const file = (await lead.file()).replace(/(intervals\/nephrostomy,[^,]*,target,)77/, "$195");
    const line = file
      .split("\r\n")
      .findIndex((each) => each.startsWith("intervals/nephrostomy") && each.includes(",target,"));
    expect(
      await lead.bringFile({ actId: actOf(1), revision: 0, bytes: new TextEncoder().encode(file) }),
    ).toEqual({
      ok: false,
      problems: [
        {
          line: line + 1,
          row: "intervals/nephrostomy",
          sentence: expect.stringContaining("The target, 95 days, lies after the latest, 90."),
        },
      ],
    });
    expect((await lead.draft()).draft).toBeNull();
  });
});
