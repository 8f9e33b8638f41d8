import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, day } from "#shared/day/day.ts";
import { instant } from "#shared/day/instant.ts";
import type { Criterion } from "#shared/output/criterion/criterion.ts";
import { criterionOf } from "#shared/output/criterion/criterion-of.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { criterionInput, daily, drain, noon, state, whole } from "#tests/factories/criterion.ts";
import { at } from "#tests/factories/reading.ts";
import { F, placed, upsized } from "#tests/support/factories.ts";
import { asksNothing, outputAsks } from "./output-asks.ts";

const LAST = day("2026-11-15");
const HOUR_MS = 3_600_000;

/** Low days, high ones, and days that nobody measured. */
const anyDays = fc.array(fc.option(fc.oneof(fc.nat(12), fc.integer({ min: 45, max: 70 }))), {
  minLength: 1,
  maxLength: 10,
});

const lungUp = { on: LAST, finding: "lung up", words: null } as const;
const anyEntries = fc.constantFrom(
  [drain(), state({})],
  [drain(), upsized({ on: "2026-11-12", size: F(12) }), state({}, "2026-11-14")],
  [
    placed({ kind: "chest tube", on: "2026-11-01" }),
    state({ imaging: { certainty: "confirmed", value: lungUp } }),
  ],
  [placed({ kind: "tunnelled pleural catheter", on: "2026-10-01" }), state({})],
);

const readingsOf = (days: readonly (number | null)[]) =>
  days.flatMap((ml, n) =>
    ml === null ? [] : [whole(addDays(LAST, n + 1 - days.length), ml, { airLeak: "none", symptoms: [] })],
  );

const plateauSince = ({ beside }: Criterion) => {
  const plateau = beside.find((one) => one.code === "plateau");
  return plateau?.code === "plateau" ? plateau.since : null;
};

describe("what a tube's output asks for", () => {
  it("is what the criterion says at whatever moment from the newest reading on: time alone brings nothing", () => {
    let met = 0;
    fc.assert(
      fc.property(anyEntries, anyDays, fc.integer({ min: 0, max: 240 }), (entries, days, hours) => {
        const readings = readingsOf(days);
        if (readings.length === 0) return;
        const newest = Math.max(...readings.map(({ to }) => to));
        const input = criterionInput({ entries, readings, now: instant(newest + hours * HOUR_MS) });
        const now = criterionOf(input);
        const asks = outputAsks(input);
        expect(asks.metUntil !== null && input.now <= asks.metUntil).toBe(now.kind === "numeric part met");
        expect(asks.plateauSince).toBe(plateauSince(now));
        if (now.kind === "numeric part met") met += 1;
      }),
      { examples: [[[drain(), state({})], [8, 6], 0]] },
    );
    expect(met).toBeGreaterThan(0);
  });

  it("is nothing without a reading, and nothing while the days say nothing yet", () => {
    expect(outputAsks(criterionInput({}))).toEqual(asksNothing);
    expect(outputAsks(criterionInput({ readings: daily("2026-11-15", [40, 30]) }))).toEqual(asksNothing);
  });

  it("is a met numeric part up to 72 h after the last complete day, to the minute (row: 72 h, common practice)", () => {
    const asks = outputAsks(criterionInput({ readings: daily("2026-11-15", [8, 6]) }));
    // Sun 15 Nov ends on the 16th at 00:00; the patient's state is of the 16th at 08:00 and holds longer.
    expect(asks).toEqual({ metUntil: at("2026-11-19T00:00Z"), plateauSince: null });
  });

  it("was a met numeric part that is long over, and says until when", () => {
    const old = criterionInput({ readings: daily("2026-11-10", [8, 6]), now: noon });
    expect(criterionOf(old).kind).toBe("cannot tell");
    expect(outputAsks(old).metUntil).toBe(at("2026-11-14T00:00Z"));
  });

  it("is met by the clinic's row, not by the example's", () => {
    const protocol = { ...exampleProtocol, output: { ...exampleProtocol.output, lowNetMl: 5 } };
    expect(outputAsks(criterionInput({ readings: daily("2026-11-15", [8, 6]), protocol }))).toEqual(
      asksNothing,
    );
  });

  it("is a plateau until a review has rested on the reading with which it came up, and again without what was seen", () => {
    const input = criterionInput({ readings: daily("2026-11-15", [60, 60, 60, 60, 60, 60]) });
    const seen = (readings: readonly string[] | null) => {
      const evidence = readings && { asOf: noon, readings: [...readings], said: ["not met"], protocol: 1 };
      const when = { precision: "day", earliest: LAST, latest: LAST } as const;
      const lastReview = { eventId: "e", when, recordedOn: LAST, decidedBy: "Dr. Orla Invented", evidence };
      return outputAsks({ ...input, tube: { ...input.tube, lastReview } }).plateauSince;
    };
    // The row was met with the fifth day, Sat 14 Nov.
    expect(outputAsks(input).plateauSince).toBe("2026-11-14");
    const until13 = ["10", "11", "12", "13"].map((date) => `tube-1 2026-11-${date}`);
    expect(seen(until13)).toBe("2026-11-14");
    expect(seen([...until13, "tube-1 2026-11-14"])).toBeNull();
    expect(seen(null)).toBe("2026-11-14");
  });
});
