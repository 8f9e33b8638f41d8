import { describe, expect, it } from "vitest";
import { isNoTube } from "#shared/sheet/no-tube.ts";

const columns = ["wholeName", "number", "kind", "size", "note", "left out"] as const;
const isNone = (text: string): boolean =>
  isNoTube({ row: 9, cells: text.split("|") }, { columns: [...columns] });

describe("a line that is no row of a tube", () => {
  it.each([
    "Total||153|||",
    "Total:||||153|",
    "TOTAL: 153|||||",
    "Grand total||153|||",
    "Sub-total|||||153",
    "Sum|||12||",
    "Count of tubes|||||153",
    "Total|||153 tubes||",
    "|Total|153|||",
    "||Total: 153|||",
    "153 patients|||||",
    "Page 2 of 4|||||",
    "Page 2/4||||printed by the front desk|",
    "Printed on 23/11/26|||||",
    "Printed on||||Mon 23 Nov 2026|",
    "- end of list -|||||",
  ])("%s", (line) => expect(isNone(line)).toBe(true));
});

describe("a line that may be a row of a tube", () => {
  it.each([
    ["with a patient's number", "Total|153||||"],
    ["with a kind of tube", "Total||PCN|||"],
    ["with a word that may be one", "Total||widget|||"],
    ["somebody of such a name", "Page, Emma||||555 0117|"],
    ["a name in two parts beside it", "Sum, Li|||||"],
    ["more than two cells", "Total||153|8|see over|"],
    ["a patient with nothing else", "Brackenfold, Ottoline|||||"],
    ["a note alone", "||||to count again|"],
    ["nothing at all", "|||||"],
  ])("%s", (_, line) => expect(isNone(line)).toBe(false));

  it("with a given name in a column of its own", () => {
    const line = { row: 9, cells: ["Sum", "Li"] };
    expect(isNoTube(line, { columns: ["familyName", "givenName"] })).toBe(false);
    expect(isNoTube({ row: 9, cells: ["Sum", "12"] }, { columns: ["familyName", "givenName"] })).toBe(true);
  });
});
