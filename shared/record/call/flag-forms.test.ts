import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { instant, zone } from "#shared/day/instant.ts";
import { onDay } from "#shared/day/when.ts";
import { exampleRedFlags } from "#shared/protocol/example-red-flags.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import type { FlagContext, RaisingContext } from "./flag-context.ts";
import { flagDoneForm } from "./flag-done-form.ts";
import { handFlagForm } from "./hand-flag-form.ts";
import { raiseFlagForm } from "./raise-flag-form.ts";

const today = day("2026-11-06");
/** Friday 6 November 2026, 14:05 in London. */
const clock = { today, now: instant(Date.parse("2026-11-06T14:05:00Z")), zone: zone("Europe/London") };
const tube = { id: "tube-2", number: 2, kind: "nephrostomy", side: confirmed<"left">("left") } as const;
const raising: RaisingContext = {
  ...clock,
  rows: exampleRedFlags,
  tubes: [
    { ...tube, status: "in" },
    { ...tube, id: "tube-3", number: 3, status: "ended" },
  ],
};
const at = (time: string) => ({ when: onDay(today), time });

const raised = (texts: Texts) => raiseFlagForm.read({ handedTo: "nobody yet", ...texts }, raising);
const codes = (read: ReturnType<typeof raised>) =>
  read.ok ? [] : read.refusals.map(({ code, field }) => [code, field]);

describe("a red flag is raised", () => {
  it("by a row: level, words and holding act are the row's, copied", () => {
    expect(raised({ row: "fever", of: "2", toldBy: "the daughter" })).toEqual({
      ok: true,
      entry: {
        ...at("14:05"),
        row: "fever",
        level: "same day",
        says: "38.0 C and over, shaking chills, or feels very unwell",
        untilReached: "reconnect to bag",
        of: { tube: "tube-2", number: 2 },
        toldBy: "the daughter",
        note: null,
        handed: null,
      },
    });
  });

  it("in own words, where no row fits: with a level of its own", () => {
    expect(raised({ says: "string hangs out", level: "next working day" })).toMatchObject({
      ok: true,
      entry: { row: null, level: "next working day", says: "string hangs out", untilReached: null, of: null },
    });
  });

  it("and handed over at once, at its own time", () => {
    const read = raised({ row: "fever", when: "13:50", handedTo: "Dr Example", handedAt: "14:00" });
    expect(read).toMatchObject({
      ok: true,
      entry: { ...at("13:50"), handed: { ...at("14:00"), to: "Dr Example" } },
    });
  });

  it.each<[string, Texts, readonly (readonly [string, string])[]]>([
    [
      "nothing told",
      {},
      [
        ["text-missing", "says"],
        ["text-missing", "level"],
      ],
    ],
    ["own words beside a row", { row: "fever", says: "hot" }, [["flag-words-beside-row", "row"]]],
    ["nobody said to have it", { row: "fever", handedTo: "" }, [["text-missing", "handedTo"]]],
    ["a tube that is not in", { row: "fever", of: "3" }, [["choice-unknown", "of"]]],
    ["a time to come", { row: "fever", when: "14:30" }, [["time-in-future", "when"]]],
    [
      "handed over before it was told",
      { row: "fever", when: "14:00", handedTo: "Dr Example", handedAt: "13:59" },
      [["before-flag-told", "handedAt"]],
    ],
    [
      "handed over at no time",
      { row: "fever", handedTo: "Dr Example", handedAt: "today" },
      [["time-missing", "handedAt"]],
    ],
  ])("not with %s", (_, texts, refused) => expect(codes(raised(texts))).toEqual(refused));
});

describe("an open red flag", () => {
  const context: FlagContext = { ...clock, told: at("13:00") };
  const hand = (texts: Texts) => handFlagForm.read(texts, context);
  const done = (texts: Texts) => flagDoneForm.read(texts, context);

  it("is handed to a named person, and closed with what was done", () => {
    expect(hand({ to: "Dr Example", at: "13:20" })).toEqual({
      ok: true,
      entry: { to: "Dr Example", at: at("13:20"), note: null },
    });
    expect(done({ what: "seen, antibiotic begun", by: "Dr Example" })).toEqual({
      ok: true,
      entry: { what: "seen, antibiotic begun", by: "Dr Example", when: at("14:05") },
    });
  });

  it.each([
    ["nobody", hand({ to: "Nobody yet" }), [["text-missing", "to"]]],
    ["somebody before it was told", hand({ to: "Dr Example", at: "12:59" }), [["before-flag-told", "at"]]],
    ["the day before", hand({ to: "Dr Example", at: "yesterday 23:50" }), [["before-flag-told", "at"]]],
    ["a time to come", hand({ to: "Dr Example", at: "14:06" }), [["time-in-future", "at"]]],
  ])("is not handed to %s", (_, read, refused) => {
    expect(read.ok ? [] : read.refusals.map(({ code, field }) => [code, field])).toEqual(refused);
  });

  it("is not closed without what was done and by whom", () => {
    const read = done({});
    expect(read.ok ? [] : read.refusals.map(({ code, field }) => [code, field])).toEqual([
      ["text-missing", "what"],
      ["text-missing", "by"],
    ]);
  });

  it("of a day that nobody knows is handed over at any time", () => {
    const unknown = { when: { precision: "unknown", earliest: null, latest: null }, time: null } as const;
    expect(handFlagForm.read({ to: "Dr Example" }, { ...clock, told: unknown }).ok).toBe(true);
  });
});
