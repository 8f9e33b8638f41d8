import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { findRow } from "#shared/protocol/find-row.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { change, sentences } from "#tests/support/change-rows.ts";
import { changeRow, dropRow } from "./change-row.ts";
import { rowsOf, typedRow } from "./rows-of.ts";

const changed = (address: string, texts: Texts, protocol: Protocol = exampleProtocol): Protocol => {
  const result = change(address, texts, protocol);
  if (!result.ok) throw new Error(result.refusals.map(refusalSentence).join(" "));
  return result.protocol;
};

describe("a row that is changed", () => {
  it("nephrostomy from 63 / 77 / 90 to 49 / 63 / 77: nothing else differs", () => {
    const draft = changed("intervals/nephrostomy", { earliest: "49", target: "63", latest: "77" });
    const asked = { kind: "nephrostomy", factors: [], under18: false, firstCatheter: false } as const;
    expect(findRow(draft, asked)).toMatchObject({ row: { earliest: 49, target: 63, latest: 77 } });
    const intervals = draft.intervals.map((row) =>
      row.id === "nephrostomy" ? { ...row, earliest: 63, target: 77, latest: 90 } : row,
    );
    expect({ ...draft, intervals }).toEqual(exampleProtocol);
  });

  it("blank is no row, which is not zero", () => {
    const draft = changed("intervals/nephrostomy", { earliest: "", matureFrom: " " });
    expect(draft.intervals.find(({ id }) => id === "nephrostomy")).toMatchObject({
      earliest: null,
      matureFrom: null,
    });
    expect(
      changed("intervals/nephrostomy", { earliest: "0" }).intervals.find(({ id }) => id === "nephrostomy"),
    ).toMatchObject({
      earliest: 0,
    });
  });

  it("takes a second way in the blank place of its list, and gives it up when all of it is blank", () => {
    const draft = changed("redFlags/fever", { "raisedBy.2.trouble": "leaking", "raisedBy.2.grave": "no" });
    expect(draft.redFlags.find(({ id }) => id === "fever")?.raisedBy).toEqual([
      { trouble: "infected", grave: true },
      { trouble: "leaking", grave: false },
    ]);
    const back = changed("redFlags/fever", { "raisedBy.2.trouble": "", "raisedBy.2.grave": "" }, draft);
    expect(back).toEqual(exampleProtocol);
  });

  it("asks for the rest of a place that is begun, and for one place where there has to be one", () => {
    expect(sentences("redFlags/fever", { "raisedBy.2.trouble": "leaking" })).toEqual([
      ["raisedBy.2.grave", "Type yes or no."],
    ]);
    expect(sentences("bleeding", { "rows.1.acts.1.act": "", "rows.1.acts.1.source": "" })).toEqual([
      ["rows.1.acts.1.act", "Type what the row says here."],
    ]);
  });

  it("is emptied to no row, and filled again, where the table can do without it", () => {
    const dropped = dropRow(exampleProtocol, "balloon");
    if (!dropped.ok) throw new Error("the balloon's row can be emptied");
    expect(dropped.protocol).toEqual({ ...exampleProtocol, balloon: null });
    expect(rowsOf(dropped.protocol).find(({ address }) => address === "balloon")).toMatchObject({
      stands: false,
    });
    const texts = typedRow(exampleProtocol, "balloon");
    expect(changeRow(dropped.protocol, "balloon", texts)).toMatchObject({
      ok: true,
      protocol: exampleProtocol,
    });
  });

  it("is refused as no row where the table cannot do without it", () => {
    const refused = dropRow(exampleProtocol, "firstCall");
    expect(refused).toEqual({
      ok: false,
      refusals: [{ code: "row-cannot-be-none", args: { row: "First call" } }],
    });
    expect(sentences("firstCall", { from: "", to: "", source: "" }).map(([field]) => field)).toEqual([
      "from",
      "to",
      "source",
    ]);
  });

  it("in a group that has none makes the group, and the last one out takes it along", () => {
    const none: Protocol = { ...exampleProtocol, calls: null };
    const draft = changed("calls.afterRemoval", { from: "1", to: "3", source: "CP" }, none);
    expect(draft.calls).toEqual({
      collectionEvery: null,
      trialOn: null,
      beforeExchange: null,
      afterRemoval: { from: 1, to: 3, source: "CP" },
      diaryMissing: null,
      notReached: null,
      rungs: [],
      hours: [],
      whereaboutsEvery: null,
      questions: [],
    });
    expect(dropRow(draft, "calls.afterRemoval")).toMatchObject({ ok: true, protocol: none });
  });

  it("is added to a list, at an address of its own, and dropped again", () => {
    const added = change("outputRows.dry", {
      kinds: "cecostomy",
      hours: "24",
      level: "same day",
      source: "CP",
    });
    expect(added).toMatchObject({ ok: true, address: "outputRows.dry/3" });
    if (!added.ok) return;
    expect(added.protocol.outputRows?.dry.at(-1)).toEqual({
      kinds: ["cecostomy"],
      hours: 24,
      level: "same day",
      onlyWayOut: null,
      source: "CP",
    });
    expect(dropRow(added.protocol, "outputRows.dry/3")).toMatchObject({
      ok: true,
      protocol: exampleProtocol,
    });
  });

  it("is found by its new name", () => {
    expect(change("calls.questions/fever", { id: "fever or chills" })).toMatchObject({
      address: "calls.questions/fever or chills",
    });
  });
});
