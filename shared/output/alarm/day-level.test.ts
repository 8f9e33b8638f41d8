import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { millilitres } from "#shared/output/microlitre.ts";
import { alarmInput, dated, ran, wholeDays } from "#tests/factories/alarm-input.ts";
import { at } from "#tests/factories/reading.ts";
import {
  blocked,
  checked,
  exchanged,
  placed,
  takenOver,
  unblocked,
  upsized,
} from "#tests/support/factories.ts";
import { alarmReasons } from "./alarm-reasons.ts";

const keys = (...[readings, more]: Parameters<typeof alarmInput>) =>
  alarmReasons(alarmInput(readings, more)).map(({ key }) => key);
const biliary = [placed({ kind: "external biliary drain" })];
const november = (on: number, kind: "nephrostomy" | "external biliary drain" = "nephrostomy") => [
  placed({ on: dated(on), kind }),
];

describe("low by its row (example table: under 100 mL/24 h, CP)", () => {
  it.each([
    [99, ["low:2026-11-01"]],
    [99.999, ["low:2026-11-01"]],
    [100, []],
    [101, []],
  ])("a whole day of %d mL: %j", (ml, expected) => {
    expect(keys(wholeDays([ml]))).toEqual(expected);
    expect(keys(wholeDays([ml]), { entries: biliary })).toEqual(expected);
  });

  it("says the day, the rate, the row and the readings", () => {
    expect(alarmReasons(alarmInput(wholeDays([70])))).toEqual([
      {
        key: "low:2026-11-01",
        code: "low",
        level: null,
        untilReached: null,
        on: "2026-11-01",
        at: at("2026-11-02T00:00Z"),
        readings: ["r2026-11-01T00:00"],
        args: { day: "2026-11-01", mlPer24h: 70, under: 100 },
        source: "CP",
      },
    ]);
  });

  it("a day that is missing, or covered in part, is never low", () => {
    expect(keys(wholeDays([800, null, 800]))).toEqual([]);
    expect(keys([ran("2026-11-01T00:00", "2026-11-01T23:59", 60)])).toEqual([]);
  });

  it("a day before the last change of size is of another tube", () => {
    const entries = [placed(), upsized({ on: "2026-11-02", at: "10:00" })];
    expect(keys(wholeDays([60, 800, 800]), { entries })).toEqual([]);
    expect(keys(wholeDays([60, 800, 60]), { entries })).toEqual(["low:2026-11-03"]);
  });

  it("a day that begins with the change of size is of the tube as it is now", () => {
    const entries = [placed(), upsized({ on: "2026-11-02", at: "00:00" })];
    expect(keys(wholeDays([60, 60]), { entries })).toEqual(["low:2026-11-02"]);
  });

  it("of a gallbladder only questions are asked: its row has no figure, and more flush than output is under none", () => {
    const entries = [placed({ kind: "cholecystostomy" })];
    expect(keys(wholeDays([20, -5]), { entries })).toEqual([]);
  });
});

describe("a usual level that a clinician accepted", () => {
  const usual = [{ row: "low" as const, mlPer24h: 60, until: day("2026-11-03") }];

  it("case 38: a segmental drain that always makes 60 mL is no alarm until the day, and one after it", () => {
    expect(keys(wholeDays([60, 62, 55, 60]), { entries: biliary, usual })).toEqual(["low:2026-11-04"]);
  });

  it("does not stand for a figure further under it than the percent of a sudden drop (70 %: under 18 of 60)", () => {
    expect(keys(wholeDays([18]), { entries: biliary, usual })).toEqual([]);
    expect(keys(wholeDays([17.999]), { entries: biliary, usual })).toEqual(["low:2026-11-01"]);
  });

  it("stands for any figure where the table has no row for a sudden drop", () => {
    const { protocol } = alarmInput([]);
    const without = { ...protocol, outputRows: { ...protocol.outputRows!, suddenDrop: null } };
    expect(keys(wholeDays([1]), { entries: biliary, usual, protocol: without })).toEqual([]);
  });

  it("of another row says nothing, and nothing of being dry", () => {
    const high = [{ row: "high" as const, mlPer24h: 60, until: day("2026-11-03") }];
    expect(keys(wholeDays([60]), { entries: biliary, usual: high })).toEqual(["low:2026-11-01"]);
    expect(keys(wholeDays([0]), { entries: biliary, usual })).toEqual([
      "dry:r2026-11-01T00:00",
      "low:2026-11-01",
    ]);
  });

  it("of much stands up to its percent over", () => {
    const much = [{ row: "high" as const, mlPer24h: 2000, until: day("2026-11-03") }];
    expect(keys(wholeDays([3400]), { entries: biliary, usual: much })).toEqual([]);
    expect(keys(wholeDays([3400.001]), { entries: biliary, usual: much })).toEqual(["high:2026-11-01"]);
  });
});

describe("high by its row (example table: urine over 3,000 from day 4, bile over 1,500, mL/24 h, CP)", () => {
  it.each([
    [2999, []],
    [3000, []],
    [3000.001, ["high:2026-11-01"]],
    [3001, ["high:2026-11-01"]],
  ])("urine, a whole day of %d mL long after the placement: %j", (ml, expected) => {
    expect(keys(wholeDays([ml]))).toEqual(expected);
  });

  it.each([
    [1500, []],
    [1500.001, ["high:2026-11-01"]],
  ])("bile, a whole day of %d mL: %j", (ml, expected) => {
    expect(keys(wholeDays([ml]), { entries: biliary })).toEqual(expected);
  });

  it("urine only from day 4 after the placement; bile from the first", () => {
    const placedFirst = [null, 3500, 3500, 3500, 3500];
    expect(keys(wholeDays(placedFirst), { entries: november(0) })).toEqual(["high:2026-11-05"]);
    const bile = november(0, "external biliary drain");
    expect(keys(wholeDays([null, 1600]), { entries: bile })).toEqual(["high:2026-11-02"]);
  });

  it("and from day 4 after a blocked tube ran again, by unblocking or by its exchange; not after a routine one", () => {
    const volumes = wholeDays([null, 3500, 3500, 3500, 3500], 9);
    const then = (...entries: Parameters<typeof Array.of>) =>
      keys(volumes, { entries: [placed(), ...entries] as never });
    expect(then(blocked({ on: dated(8) }), unblocked({ on: dated(9) }))).toEqual(["high:2026-11-14"]);
    expect(then(blocked({ on: dated(8) }), exchanged({ on: dated(9) }))).toEqual(["high:2026-11-14"]);
    expect(then(exchanged({ on: dated(9) }))).toHaveLength(4);
  });

  it("bile from the first, also on a day before it was unblocked", () => {
    const entries = [...biliary, blocked({ on: dated(3) }), unblocked({ on: dated(4) })];
    expect(keys(wholeDays([1600]), { entries })).toEqual(["high:2026-11-01"]);
  });

  it("a tube that was taken over has no start that anybody knows: any day counts", () => {
    const entries = [takenOver({ on: "2026-11-01" })];
    expect(keys(wholeDays([null, 3500]), { entries })).toEqual(["high:2026-11-02"]);
  });

  it("what is done while it is blocked relieves nothing; the exchange that follows does, and a later one no more", () => {
    const volumes = wholeDays([null, 3500, 3500, 3500, 3500], 9);
    const first = (...entries: Parameters<typeof Array.of>) =>
      keys(volumes, { entries: [placed(), ...entries] as never })[0];
    expect(first(blocked({ on: dated(8) }), checked({ on: dated(9) }))).toBe("high:2026-11-11");
    const exchange = exchanged({ on: dated(9) });
    expect(first(blocked({ on: dated(7) }), checked({ on: dated(8) }), exchange)).toBe("high:2026-11-14");
    expect(first(checked({ on: dated(8) }), exchange)).toBe("high:2026-11-11");
    expect(first(blocked({ on: dated(3) }), unblocked({ on: dated(4) }), exchange)).toBe("high:2026-11-11");
    expect(first(blocked({ on: dated(3) }), exchanged({ on: dated(4) }), exchange)).toBe("high:2026-11-11");
    expect(first(blocked({ on: dated(9) }), unblocked({ on: "?" }))).toBe("high:2026-11-11");
  });

  it("says the figure of its row", () => {
    const [reason] = alarmReasons(alarmInput(wholeDays([3500])));
    expect(reason?.args).toEqual({ day: "2026-11-01", mlPer24h: 3500, over: 3000 });
  });

  it("holds for bile what its red flag says until somebody is reached", () => {
    const { protocol } = alarmInput([]);
    const redFlags = protocol.redFlags.map((flag) =>
      flag.id === "much bile or dizzy" ? { ...flag, untilReached: "drink" } : flag,
    );
    const input = alarmInput(wholeDays([1600]), { entries: biliary, protocol: { ...protocol, redFlags } });
    expect(alarmReasons(input)).toMatchObject([{ code: "high", untilReached: "drink" }]);
  });

  it("is same day for bile by its red flag, and of no named level for urine", () => {
    const level = (entries: typeof biliary, ml: number) =>
      alarmReasons(alarmInput(wholeDays([ml]), { entries })).map((reason) => reason.level);
    expect(level(biliary, 1600)).toEqual(["same day"]);
    expect(level([placed()], 3500)).toEqual([null]);
  });
});

describe("what is no output raises nothing", () => {
  it("case 27: 600 mL aspirated at the placement sit in no day", () => {
    const aspirate = ran("2026-11-01T00:00", "2026-11-02T00:00", 6000, { procedureAspirate: true });
    expect(keys([aspirate])).toEqual([]);
  });

  it("case 28: irrigation that went in is told apart and not subtracted", () => {
    const irrigated = ran("2026-11-01T00:00", "2026-11-02T00:00", 110, {
      otherIn: [{ fluid: "irrigation", ul: millilitres(500) }],
    });
    expect(keys([irrigated])).toEqual([]);
  });
});
