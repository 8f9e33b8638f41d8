import { describe, expect, it } from "vitest";
import { bearsOnFlag } from "./red-flag-page.ts";

describe("what bears on a red flag", () => {
  it("an unknown is asked for, and never read as absent", () => {
    expect(
      bearsOnFlag({
        chemotherapy: { certainty: "reported", value: true },
        immuneSuppression: { certainty: "confirmed", value: false },
        cordInjuryT6OrAbove: { certainty: "unknown" },
      }),
    ).toEqual([
      { word: "chemotherapy", says: "yes (reported)" },
      { word: "immune suppression", says: "no" },
      { word: "cord injury at T6 or above", says: "not known: ask" },
    ]);
    expect(new Set(bearsOnFlag({}).map(({ says }) => says))).toEqual(new Set(["not known: ask"]));
  });
});
