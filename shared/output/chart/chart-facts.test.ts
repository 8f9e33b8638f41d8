import { describe, expect, it } from "vitest";
import { zone } from "#shared/day/instant.ts";
import { outputOfTube } from "#shared/output/output-of-tube.ts";
import type { Reading } from "#shared/output/reading.ts";
import { trendOf } from "#shared/output/trend/trend.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { fold } from "#shared/tube/fold.ts";
import { ran, wholeDays } from "#tests/factories/alarm-input.ts";
import { at, flush } from "#tests/factories/reading.ts";
import { type Entry, F, placed } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { chartFacts } from "./chart-facts.ts";
import { chartLimit } from "./chart-limit.ts";

const utc = zone("UTC");
const now = at("2026-11-20T12:00Z");

function chartOf(readings: readonly Reading[], entries: readonly Entry[] = [placed()]) {
  const tube = fold(history(...entries)).tubes[0]!;
  const output = outputOfTube(tube, { readings, zone: utc, row: exampleProtocol.output, now });
  const trend = trendOf(output.days, null);
  return chartFacts(tube, { readings, zone: utc, now, protocol: exampleProtocol, output, trend });
}

describe("what a chart is drawn from", () => {
  it("is each reading with all that came out, and what counts of it", () => {
    const { readings, span } = chartOf([
      ran("2026-11-02T00:00", "2026-11-03T00:00", 25, { flushGiven: flush(8), characters: ["serous"] }),
      ran("2026-11-03T00:00", "2026-11-04T00:00", 10, { flushGiven: flush(20), flushWithdrawn: flush(15) }),
      ran("2026-11-04T00:00", "2026-11-05T00:00", 5, { basis: "already net", flushGiven: flush(30) }),
    ]);
    expect(readings).toMatchObject([
      { drained: 25_000, net: 17_000, because: [], characters: ["serous"] },
      { drained: 25_000, net: 5_000 },
      { drained: 5_000, net: 5_000 },
    ]);
    expect(span).toEqual({ from: at("2026-11-02T00:00Z"), to: now });
  });

  it("keeps what cannot be told: a flush not recorded, a volume unknown, a time claimed twice", () => {
    const { readings } = chartOf([
      ran("2026-11-02T00:00", "2026-11-03T00:00", 25, { flushGiven: "not recorded" }),
      ran("2026-11-03T00:00", "2026-11-04T00:00", 0, { gross: { certainty: "unknown" } }),
      ran("2026-11-05T00:00", "2026-11-06T00:00", 20),
      ran("2026-11-05T12:00", "2026-11-06T12:00", 30),
    ]);
    expect(readings).toMatchObject([
      { drained: 25_000, net: null, because: ["flush-not-recorded"] },
      { drained: null, net: null, because: ["volume-unknown"] },
      { drained: 20_000, net: null, because: ["overlap"] },
      { drained: 30_000, net: null, because: ["overlap"] },
    ]);
  });

  it("of a figure that is net already nothing that was drawn back comes on top", () => {
    const net = ran("2026-11-02T00:00", "2026-11-03T00:00", 5, {
      basis: "already net",
      flushGiven: flush(30),
      flushWithdrawn: flush(3),
    });
    expect(chartOf([net]).readings).toMatchObject([{ drained: 5_000, net: 5_000 }]);
  });

  it("has the tube's size, and none where nobody knows it", () => {
    expect(chartOf([], [placed({ size: F(12) })]).size).toEqual(F(12));
    expect(chartOf([], [placed({ size: unknownFact })]).size).toBeNull();
  });

  it("tells an aspirate of the procedure apart", () => {
    const { readings, aspirates } = chartOf([
      ran("2026-11-02T08:00", "2026-11-02T08:30", 600, { procedureAspirate: true }),
      ran("2026-11-02T08:30", "2026-11-03T08:00", 30),
    ]);
    expect(readings).toHaveLength(1);
    expect(aspirates).toEqual([{ id: "r2026-11-02T08:00", at: at("2026-11-02T08:30Z"), ul: 600_000 }]);
    const unknown = ran("2026-11-02T08:00", "2026-11-02T08:30", 0, {
      procedureAspirate: true,
      gross: { certainty: "unknown" },
    });
    expect(chartOf([unknown]).aspirates[0]?.ul).toBeNull();
  });

  it("is empty before the first reading", () => {
    expect(chartOf([])).toMatchObject({ span: null, readings: [], band: null, changes: [] });
  });

  it("has the band of the trend from the middle of its first day to that of its last", () => {
    const { band } = chartOf(wholeDays([120, 112, 101, 96, 84, 80, 69]));
    // Through (3, 96) with slopes -9.5 and -7.5.
    expect(band).toEqual({
      from: at("2026-11-01T12:00Z"),
      to: at("2026-11-07T12:00Z"),
      steepest: [124.5, 67.5],
      flattest: [118.5, 73.5],
    });
    expect(chartOf(wholeDays([50, 40, 30, 20])).band).toBeNull();
    expect(chartOf(wholeDays([50, 40])).band).toBeNull();
  });
});

describe("the row that bars are held against", () => {
  it.each([
    // Example table: low net day 10, of a lymphocele 20; a nephrostomy under 100 in 24 hours; nothing of the gallbladder by volume.
    ["abscess drain", "collection", "to bag", { means: "low day", underMl: 10 }],
    ["lymphocele drain", "collection", "to bag", { means: "low day", underMl: 20 }],
    ["abscess drain", "collection", "capped", null],
    ["nephrostomy", "drains an organ", "to bag", { means: "alarm", underMl: 100 }],
    ["nephrostomy", "drains an organ", "clamped", null],
    ["cholecystostomy", "drains an organ", "to bag", null],
    ["chest tube", "air and fluid", "underwater seal", null],
  ] as const)("of a %s, %s, %s is %j", (kind, role, mode, limit) => {
    expect(chartLimit({ kind, role, mode }, exampleProtocol)).toEqual(limit);
  });

  it("is none of a kind that the table does not name, and none of a tube that is in for something else", () => {
    const of = { kind: "nephrostomy", role: "drains an organ", mode: "to bag" } as const;
    const { outputRows } = exampleProtocol;
    if (outputRows === null) throw new Error("the example has rows");
    expect(chartLimit(of, { ...exampleProtocol, outputRows: { ...outputRows, low: [] } })).toBeNull();
    expect(chartLimit({ ...of, role: "venting" }, exampleProtocol)).toBeNull();
  });

  it("is none of a version of the table that has no such rows", () => {
    const before = { ...exampleProtocol, outputRows: null };
    const of = { kind: "nephrostomy", role: "drains an organ", mode: "to bag" } as const;
    expect(chartLimit(of, before)).toBeNull();
    expect(chartLimit({ kind: "lymphocele drain", role: "collection", mode: "to bag" }, before)).toEqual({
      means: "low day",
      underMl: 10,
    });
  });
});
