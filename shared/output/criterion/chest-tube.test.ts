import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import type { Reading } from "#shared/output/reading.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { criterionWhen, daily, drain, state, whole } from "#tests/factories/criterion.ts";
import { at } from "#tests/factories/reading.ts";

type Asked = Parameters<typeof criterionWhen>[0];

const film = (on: string) => state({ imaging: confirmed({ on: day(on), finding: "lung up", words: null }) });
const entries = [drain({ kind: "chest tube", side: "left" }), film("2026-11-15")];
const asked = (readings: readonly Reading[], more: Asked = {}) =>
  criterionWhen({ entries, readings, ...more });
const dry = (on: string, airLeak: Reading["airLeak"]) => whole(on, 20, { airLeak });
/** From midnight to 09:00 of Mon 16 Nov. */
const morning = (airLeak: Reading["airLeak"], from = "2026-11-16T00:00Z") =>
  whole("2026-11-16", 5, { from: at(from), to: at("2026-11-16T09:00Z"), airLeak });
const { outputRows, ...rest } = exampleProtocol;
const without = (row: "chestTube" | "clinicalStateHours") => ({
  protocol: { ...rest, outputRows: { ...outputRows!, [row]: null } },
});

describe("air leak of a chest tube (example table: none for 24 h, from memory)", () => {
  it("one before the last 24 h speaks against nothing", () => {
    expect(asked([dry("2026-11-14", "present"), dry("2026-11-15", "none")]).kind).toBe("numeric part met");
    expect(asked([dry("2026-11-14", "not recorded"), dry("2026-11-15", "none")]).kind).toBe(
      "numeric part met",
    );
  });

  it("one of the last 24 h speaks against it, the newest is told", () => {
    const two = [dry("2026-11-15", "present"), morning("present")];
    for (const readings of [two, two.toReversed()])
      expect(asked(readings).because).toEqual([{ code: "air-leak", at: at("2026-11-16T09:00Z") }]);
  });

  it("each reading of the 24 h has to say so", () => {
    const unknown = [{ code: "air-leak-not-recorded", hours: 24 }];
    expect(asked([dry("2026-11-15", "not recorded"), morning("none")]).because).toEqual(unknown);
    expect(asked([dry("2026-11-15", "none"), morning("not recorded")]).because).toEqual(unknown);
    expect(asked([dry("2026-11-15", "none"), morning("none")]).kind).toBe("numeric part met");
    // From 00:00 to 00:01 nobody looked.
    const late = morning("none", "2026-11-16T00:01Z");
    expect(asked([dry("2026-11-15", "none"), late]).because).toEqual(unknown);
  });

  it("of another tube says nothing of this one", () => {
    const other = whole("2026-11-15", 20, { airLeak: "present", tubeId: "tube-2" });
    expect(asked([dry("2026-11-15", "none"), other]).kind).toBe("numeric part met");
  });

  it("what it rests on: the readings of those hours and the film", () => {
    expect(asked([dry("2026-11-15", "none"), morning("none")]).evidence).toMatchObject({
      readings: ["tube-1 2026-11-15", "tube-1 2026-11-16"],
      events: ["e2"],
    });
  });
});

describe("the film of a chest tube", () => {
  const leakless = [dry("2026-11-15", "none")];

  it("counts from the first hour of its day: of the 13th it is 72 h old when the 16th begins", () => {
    const old = { entries: [drain({ kind: "chest tube", side: "left" }), film("2026-11-13")] };
    expect(asked(leakless, { ...old, now: at("2026-11-16T00:00Z") }).kind).toBe("numeric part met");
    expect(asked(leakless, { ...old, now: at("2026-11-16T00:01Z") })).toMatchObject({
      because: [{ code: "film-too-old", day: "2026-11-13", hours: 72 }],
      evidence: { events: ["e2"] },
    });
  });

  it("that nobody knows of, or without a row for its age: cannot tell", () => {
    const unknown = [drain({ kind: "chest tube", side: "left" }), state({ imaging: unknownFact })];
    expect(asked(leakless, { entries: unknown }).because).toEqual([{ code: "no-film" }]);
    expect(asked(leakless, without("clinicalStateHours")).because).toEqual([
      { code: "no-row", of: "age of the clinical state" },
    ]);
  });
});

it("a chest tube without a row cannot be told, and none of it is a plateau or asks for a cavity", () => {
  expect(asked([dry("2026-11-15", "none")], without("chestTube")).because).toEqual([
    { code: "no-row", of: "for this kind" },
  ]);
  const beside = drain({ tube: "tube-2", number: 2 });
  const week = daily("2026-11-15", [60, 60, 60, 60, 60, 60, 60], { airLeak: "none" });
  expect(asked(week, { entries: [...entries, beside] })).toMatchObject({
    kind: "numeric part met",
    beside: [],
  });
});
