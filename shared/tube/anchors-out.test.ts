import { describe, expect, it } from "vitest";
import {
  anchorsRemoved,
  converted,
  type Entry,
  exchanged,
  factsNoted,
  newPuncture,
  placed,
} from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { confirmed } from "./certainty.ts";
import { fold } from "./fold.ts";

const g = placed({ kind: "balloon gastrostomy", side: "not sided" });
const out = [g, anchorsRemoved({ on: "2026-08-25" })];
const exchange = exchanged({ on: "2026-08-29" });
const outAfter = (...entries: readonly Entry[]) =>
  fold(history(...entries)).tubes.map(({ anchorsOut }) => anchorsOut);

describe("anchors that came out", () => {
  it("stay out through an exchange and a conversion, and are put in again by a new puncture", () => {
    expect(outAfter(g)).toEqual([null]);
    expect(outAfter(...out)).toEqual(["this one"]);
    expect(outAfter(...out, exchange)).toEqual(["an earlier one"]);
    const turned = converted({ kind: "gastrojejunostomy", on: "2026-08-29" });
    expect(outAfter(...out, turned)).toEqual(["this one", "an earlier one"]);
    expect(outAfter(...out, newPuncture({ on: "2026-08-29" }))).toEqual([null]);
  });

  it.each([
    ["no anchors", "an earlier one", "an earlier one"],
    ["disc", null, "an earlier one"],
    ["suture", null, "an earlier one"],
    ["2 anchors", null, null],
  ] as const)("before an exchange %s says: %s; of some that came out: %s", (fixation, alone, afterEntry) => {
    const held = factsNoted({ on: "2026-08-28", facts: { fixation: confirmed(fixation) } });
    expect(outAfter(g, held, exchange)).toEqual([alone]);
    expect(outAfter(...out, held, exchange)).toEqual([afterEntry]);
  });
});
