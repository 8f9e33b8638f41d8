import { describe, expect, it } from "vitest";
import type { Reading } from "#shared/output/reading.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import {
  criterionWhen,
  daily,
  drain,
  low,
  noon,
  said,
  state,
  well,
  whole,
} from "#tests/factories/criterion.ts";
import { at, flush } from "#tests/factories/reading.ts";
import * as make from "#tests/support/factories.ts";

const { upsized } = make;
const HOUR = 3_600_000;

describe("a collection drain: net under 10 mL/24 h on 2 complete days running (source 1 of the example table)", () => {
  it("is met by two low days, each with its figure, with row, version and readings", () => {
    const criterion = criterionWhen({ readings: low });
    expect(criterion).toEqual({
      kind: "numeric part met",
      because: [
        { code: "day-low", day: "2026-11-15", mlPer24h: 6, underMl: 10 },
        { code: "day-low", day: "2026-11-14", mlPer24h: 8, underMl: 10 },
      ],
      beside: [],
      row: {
        what: "net days",
        underMl: 10,
        running: 2,
        source: "1; rest CP",
        version: 1,
        approved: false,
      },
      evidence: {
        days: [
          { day: "2026-11-15", state: "low", mlPer24h: 6 },
          { day: "2026-11-14", state: "low", mlPer24h: 8 },
        ],
        sessions: [],
        readings: ["tube-1 2026-11-15", "tube-1 2026-11-14"],
        events: ["e2"],
      },
    });
  });

  it.each([
    // 9.999 mL is under 10, 10 is not.
    [9.999, "numeric part met"],
    [10, "not met"],
  ])("%s mL on the last day: %s", (ml, kind) => {
    expect(criterionWhen({ readings: daily("2026-11-15", [8, ml]) }).kind).toBe(kind);
  });

  it("names the day that is not low, the newest first", () => {
    // 35 mL emptied with 3 x 10 mL flush is 5: low. 50 with 3 x 10 is 20: not.
    const readings = [
      whole("2026-11-14", 50, { flushGiven: flush(30) }),
      whole("2026-11-15", 35, { flushGiven: flush(30) }),
    ];
    expect(said({ readings })).toBe("Numeric part not met: Sat 14 Nov 2026 20 mL/24 h, not under 10.");
    expect(said({ readings: daily("2026-11-15", [30, 40]) })).toMatch(/Sun 15 Nov 2026 40/);
  });

  it("hard case 3: upsized after three low days, the counter starts again", () => {
    const entries = [drain(), upsized({ on: "2026-11-14", size: make.F(12) }), well];
    const readings = daily("2026-11-15", [5, 5, 5, 6]);
    expect(said({ entries, readings })).toBe(
      "Numeric part not met: upsized on Sat 14 Nov 2026, one complete day since.",
    );
    // A day later there are two: the 15th and the 16th.
    const later = {
      entries: [...entries, state({}, "2026-11-17")],
      readings: [...readings, whole("2026-11-16", 7)],
    };
    expect(criterionWhen({ ...later, now: noon + 24 * HOUR }).kind).toBe("numeric part met");
  });

  it("hard case 3: with its clock time known, the day of a change is no whole day of either side", () => {
    const entries = [drain(), upsized({ on: "2026-11-14", at: "09:00", size: make.F(12) }), well];
    expect(said({ entries, readings: daily("2026-11-15", [5, 5, 6]) })).toMatch(/one complete day since/);
    const atMidnight = [drain(), upsized({ on: "2026-11-14", at: "00:00", size: make.F(12) }), well];
    expect(criterionWhen({ entries: atMidnight, readings: low }).kind).toBe("numeric part met");
  });

  it("a change of an unknown day may have come before any of them", () => {
    const entries = [
      drain(),
      make.repositioned({ on: "2026-11-10..2026-11-14", recordedOn: "2026-11-15" }),
      well,
    ];
    expect(said({ entries, readings: low })).toBe(
      "Cannot tell: whether a change of the tube came before Sat 14 Nov 2026 is not known.",
    );
    const undated = [drain(), make.repositioned({ on: "?", recordedOn: "2026-11-15" }), well];
    expect(said({ entries: undated, readings: low })).toMatch(/^Cannot tell: whether a change/);
  });

  it("placed yesterday: no complete day since, whatever was not measured", () => {
    expect(said({ entries: [drain({ on: "2026-11-15" }), well] })).toBe(
      "Numeric part not met: placed on Sun 15 Nov 2026, no complete days since.",
    );
  });

  it("a day without an entry is not low: cannot tell", () => {
    // Thu 12 low, Fri 13 nothing, Sat 14 and Sun 15 nothing: one low day, and it is 3.5 days old by now.
    expect(said({})).toBe("Cannot tell: no complete day.");
    expect(said({ readings: [whole("2026-11-13", 5), whole("2026-11-15", 5)] })).toBe(
      "Cannot tell: Sat 14 Nov 2026: no entry.",
    );
  });

  it("a high day further back proves nothing while a newer one is missing", () => {
    // Fri 13 was 40, Sat 14 was 5, of Sun 15 nothing is known: it may have been low.
    expect(criterionWhen({ readings: daily("2026-11-14", [40, 5]) }).because).toEqual([
      { code: "day-unknown", day: "2026-11-15", faults: ["no-reading"] },
      { code: "day-not-low", day: "2026-11-13", mlPer24h: 40, underMl: 10 },
    ]);
    // Sat 14 was 40: whatever Sunday was, two running are not low.
    expect(said({ readings: daily("2026-11-14", [5, 40]) })).toMatch(/^Numeric part not met: Sat 14/);
  });

  it("hard case 37: two low days, then silence: no longer met", () => {
    // The 13th ended on the 14th at 00:00; 72 h later it is the 17th at 00:00.
    const asked = { entries: [drain(), state({}, "2026-11-16")], readings: daily("2026-11-13", [8, 6]) };
    expect(criterionWhen({ ...asked, now: at("2026-11-17T00:00Z") }).kind).toBe("numeric part met");
    expect(said({ ...asked, now: at("2026-11-17T00:00:01Z") })).toBe(
      "Cannot tell: the last complete day was Fri 13 Nov 2026, over 72 h ago.",
    );
  });

  it("hard case 6: the flush does not come back", () => {
    // 20 mL with 30 of flush is -10: it stays inside.
    const readings = [whole("2026-11-14", 8), whole("2026-11-15", 20, { flushGiven: flush(30) })];
    expect(said({ readings })).toBe("Cannot tell: Sun 15 Nov 2026: the flush does not come back.");
  });

  it.each<[string, Partial<Reading>, string]>([
    ["flush not recorded where one is ordered", { flushGiven: "not recorded" }, "flush-not-recorded"],
    ["a volume that nobody knows", { gross: unknownFact }, "volume-unknown"],
    ["an estimate", { measuredBy: "estimate" }, "estimated"],
    ["hard case 16: a leak round the tube", { leak: "soaking" }, "leak-round-tube"],
  ])("cannot tell of %s", (_name, overrides, fault) => {
    const { kind, because } = criterionWhen({
      readings: [whole("2026-11-14", 8, overrides), whole("2026-11-15", 6)],
    });
    expect(kind).toBe("cannot tell");
    expect(because[0]).toEqual({ code: "day-unknown", day: "2026-11-14", faults: [fault] });
  });

  it("hard case 16: recorded as leaking by the patient, and nobody has looked since", () => {
    expect(said({ entries: [drain(), make.leaking({ on: "2026-11-15" }), well], readings: low })).toBe(
      "Cannot tell: recorded as leaking, and nobody has looked since.",
    );
  });

  it("what ran since the last complete day is not passed over", () => {
    const morning = (ml: number, said: Partial<Reading> = {}) =>
      whole("2026-11-16", ml, { to: at("2026-11-16T09:00Z"), ...said });
    expect(criterionWhen({ readings: [...low, morning(9)] }).kind).toBe("numeric part met");
    expect(said({ readings: [...low, morning(10)] })).toBe(
      "Cannot tell: since then, Mon 16 Nov 2026: already 10 mL, not under 10.",
    );
    expect(said({ readings: [...low, morning(2, { leak: "damp" })] })).toBe(
      "Cannot tell: since then, Mon 16 Nov 2026: it leaks round the tube.",
    );
  });

  it("of a lymphocele the row is 20", () => {
    const entries = [drain({ kind: "lymphocele drain" }), well];
    const readings = daily("2026-11-15", [18, 19]);
    expect(criterionWhen({ entries, readings })).toMatchObject({
      kind: "numeric part met",
      row: { underMl: 20, source: "CP" },
    });
  });

  it("tells of readings that count in no day", () => {
    const future = whole("2026-11-20", 8);
    expect(criterionWhen({ readings: [...low, future] }).beside).toEqual([
      { code: "readings-not-placed", count: 1 },
    ]);
  });
});
