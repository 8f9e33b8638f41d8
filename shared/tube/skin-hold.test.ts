import { describe, expect, it } from "vitest";
import { saysNone, skinHoldIn } from "./skin-hold.ts";
import { skinHolds } from "./vocabulary.ts";

/** Words as a nurse types them into the line for the fixation (common practice, no source). */
describe("what a text about the fixation names", () => {
  it.each([
    ["3 anchors", "anchors"],
    ["Anchor", "anchors"],
    ["T-fasteners x 2", "anchors"],
    ["t fasteners, disc", "anchors"],
    ["T-tacks", "anchors"],
    ["2 t bars", "anchors"],
    ["10 anchors", "anchors"],
    ["suture", "suture"],
    ["SUTURED, dressing", "suture"],
    ["two stitches", "suture"],
    ["suture and 2 anchors", "anchors"],
    ["no anchors, suture", "suture"],
    ["no  anchors, suture", "suture"],
  ])("%s: %s", (text, holds) => expect(skinHoldIn(text)).toBe(holds));

  it.each([
    "disc",
    "dressing",
    "none",
    "cuff",
    "no anchors",
    "0 anchors",
    "without anchors or sutures",
    "No suture nor anchor",
  ])("%s: neither", (text) => expect(skinHoldIn(text)).toBeNull());

  it.each([
    ["anchors removed?", "anchors"],
    ["not sutured", "suture"],
    ["no loose anchors", "anchors"],
    ["disc, no anchors left but one suture", "suture"],
  ])("what cannot be read as none is asked: %s", (text, holds) => expect(skinHoldIn(text)).toBe(holds));

  it.each([
    ["no anchors", ["anchors"]],
    ["without anchors or sutures", ["anchors", "suture"]],
    ["0 anchors, suture", ["anchors"]],
    ["None", ["anchors", "suture"]],
    ["disc", []],
    ["3 anchors", []],
    ["anchors removed?", []],
  ])("%s says that there are none of: %j", (text, none) =>
    expect(skinHolds.filter((holds) => saysNone(text, holds))).toEqual(none),
  );

  it.each(["sutureless", "anchorage plate", "a bartacked dressing"])(
    "a word that only begins like one names none: %s",
    (text) => expect(skinHoldIn(text)).toBeNull(),
  );
});
