import { describe, expect, it } from "vitest";
import { zone } from "#shared/day/instant.ts";
import { beforeShutting } from "#shared/review/before-shutting.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import type { Conditions } from "#shared/tube/payloads.ts";
import { shuttingSentence } from "#shared/words/before-shutting.ts";
import { at, reading } from "#tests/factories/reading.ts";

const chest = { role: "air and fluid", kind: "chest tube" } as const;
const kidney = { role: "drains an organ", kind: "nephrostomy" } as const;
const drain = { role: "collection", kind: "abscess drain" } as const;

const codes = (
  tube: typeof chest | typeof kidney | typeof drain,
  conditions: Conditions = {},
  ...readings: Parameters<typeof reading>
) =>
  beforeShutting({ tube, conditions, readings: readings.map((one) => reading(one)) }).map(({ code }) => code);

describe("before a tube is capped or clamped (hard case 40)", () => {
  it("a chest tube that bubbled last is never clamped; of one that did not it is said when that was", () => {
    expect(codes(chest, {}, { airLeak: "present" })).toEqual(["air-leak"]);
    expect(codes(chest, {}, { airLeak: "none" })).toEqual(["no-air-leak-then"]);
  });

  it("the newest reading that says so decides, in whatever order they come", () => {
    const early = reading({ airLeak: "present", to: at("2026-11-03T05:00Z") });
    const late = reading({ airLeak: "none", to: at("2026-11-04T05:00Z") });
    const silent = reading({ airLeak: "not recorded", to: at("2026-11-05T05:00Z") });
    const asked = { tube: chest, conditions: {} };
    expect(beforeShutting({ ...asked, readings: [silent, late, early] })).toEqual([
      { code: "no-air-leak-then", grave: false, to: late.to },
    ]);
    expect(beforeShutting({ ...asked, readings: [early, late] })).toEqual([
      { code: "no-air-leak-then", grave: false, to: late.to },
    ]);
    expect(beforeShutting({ ...asked, readings: [] })).toEqual([
      { code: "air-leak-not-recorded", grave: true },
    ]);
    expect(
      beforeShutting({ tube: kidney, conditions: { conduitOrNeobladder: confirmed(true) }, readings: [] }),
    ).toEqual([{ code: "conduit-or-neobladder", grave: false }]);
    expect(beforeShutting({ ...asked, readings: [early, silent] })).toEqual([
      { code: "air-leak", grave: true, to: early.to },
    ]);
  });

  it("a leak that nobody looked for is never read as none", () => {
    expect(codes(chest)).toEqual(["air-leak-not-recorded"]);
    expect(codes(drain)).toEqual([]);
  });

  it.each([
    ["known", confirmed(true), ["conduit-or-neobladder"]],
    ["known not", confirmed(false), []],
    ["unknown", unknownFact, []],
  ] as const)("a conduit or neobladder that is %s", (_name, conduitOrNeobladder, expected) => {
    expect(codes(kidney, { conduitOrNeobladder })).toEqual(expected);
    expect(codes(drain, { conduitOrNeobladder })).toEqual([]);
  });

  it("is said in full", () => {
    const clinic = zone("Europe/London");
    expect(shuttingSentence({ code: "air-leak", grave: true, to: at("2026-11-03T05:00Z") }, clinic)).toBe(
      "Air leaked at Tue 3 Nov 2026, 05:00, the last that is recorded. A chest tube is never clamped while it bubbles.",
    );
    expect(
      shuttingSentence({ code: "no-air-leak-then", grave: false, to: at("2026-11-03T05:00Z") }, clinic),
    ).toBe(
      "No air leaked at Tue 3 Nov 2026, 05:00, the last that is recorded. Look at the seal again: a chest tube is never clamped while it bubbles.",
    );
    expect(shuttingSentence({ code: "air-leak-not-recorded", grave: true }, clinic)).toBe(
      "No reading says whether air leaks. A chest tube is never clamped while it bubbles: look at the seal first.",
    );
    expect(shuttingSentence({ code: "conduit-or-neobladder", grave: false }, clinic)).toBe(
      "The patient has a conduit or a neobladder: ask whether this tube may be shut at all.",
    );
  });
});
