import { describe, expect, it } from "vitest";
import { alarmInput, dated, ran, wholeDays } from "#tests/factories/alarm-input.ts";
import { blocked, placed, takenOver, unblocked } from "#tests/support/factories.ts";
import { alarmReasons } from "./alarm-reasons.ts";

const drops = (...[readings, more]: Parameters<typeof alarmInput>) =>
  alarmReasons(alarmInput(readings, more)).flatMap(({ code, key }) => (code === "sudden-drop" ? [key] : []));
const cholecystostomy = [placed({ kind: "cholecystostomy" })];

describe("sudden drop (example table: over 70 % under the median of the last 3 complete days, and 300 mL less, CP)", () => {
  it.each([
    [301, []],
    [300, []],
    [299.999, ["sudden-drop:2026-11-04"]],
    [299, ["sudden-drop:2026-11-04"]],
  ])("from 1,000 to %d mL, 70 %% being 300: %j", (ml, expected) => {
    expect(drops(wholeDays([1000, 1000, 1000, ml]))).toEqual(expected);
  });

  it.each([
    [101, []],
    [100.001, []],
    [100, ["sudden-drop:2026-11-04"]],
    [99, ["sudden-drop:2026-11-04"]],
  ])("from 400 to %d mL, 300 less being 100 and 70 %% 120: %j", (ml, expected) => {
    expect(drops(wholeDays([400, 400, 400, ml]), { entries: cholecystostomy })).toEqual(expected);
  });

  it("takes the median of three: one day that was high or low by chance is no measure", () => {
    expect(drops(wholeDays([4000, 1000, 1000, 320]))).toEqual([]);
    expect(drops(wholeDays([1000, 200, 1000, 290]))).toEqual(["sudden-drop:2026-11-04"]);
  });

  it("needs three complete days before it; a missing one is not among them", () => {
    expect(drops(wholeDays([1000, 1000, 200]))).toEqual([]);
    expect(drops(wholeDays([1000, null, 1000, 200]))).toEqual([]);
    expect(drops(wholeDays([1000, null, 1000, 1000, 200]))).toEqual(["sudden-drop:2026-11-05"]);
  });

  it("a day that was measured in part is not among them", () => {
    const part = ran("2026-11-02T00:00", "2026-11-02T23:00", 1000);
    expect(drops([...wholeDays([1000, null, 1000, 200]), part])).toEqual([]);
    expect(drops([...wholeDays([1000, null, 1000, 1000, 200]), part])).toEqual(["sudden-drop:2026-11-05"]);
  });

  it("holds a day against the last three, not against all before it", () => {
    expect(drops(wholeDays([100, 100, 100, 1000, 1000, 1000, 290]))).toEqual(["sudden-drop:2026-11-07"]);
  });

  it("of a tube that was taken over every complete day is a measure", () => {
    const entries = [takenOver({ on: "2026-11-01", at: "00:00" })];
    expect(drops(wholeDays([1000, 1000, 1000, 200]), { entries })).toEqual(["sudden-drop:2026-11-04"]);
  });

  /*
   * Relieved on Sun 1 Nov 10:00: the first 72 h end on Wed 4 Nov 10:00, so the first day that begins after them is Thu 5 Nov, day 4, and
   * the days before it, of 3,500 mL, are no measure: 600 is expected, though it is 82.9 % and 2,900 mL under their median.
   */
  it("case 39: from 3,500 to 600 mL on day 4 after the relief is expected", () => {
    const entries = [placed({ on: dated(0), at: "10:00" })];
    expect(drops(wholeDays([null, 3500, 3500, 3500, 600, 600, 600]), { entries })).toEqual([]);
    const relieved = [placed(), blocked({ on: "2026-10-31" }), unblocked({ on: dated(0), at: "10:00" })];
    expect(drops(wholeDays([null, 3500, 3500, 3500, 600]), { entries: relieved })).toEqual([]);
  });

  /* Later, 5 to 7 Nov at 1,500 each are the measure of 8 Nov: 320 is 78.7 % under 1,500, and 1,180 mL less. */
  it("case 39: from 1,500 to 320 mL later is an alarm", () => {
    const entries = [placed({ on: dated(0), at: "10:00" })];
    const days = wholeDays([null, 3500, 3500, 3500, 1500, 1500, 1500, 320]);
    expect(drops(days, { entries })).toEqual(["sudden-drop:2026-11-08"]);
    const [reason] = alarmReasons(alarmInput(days, { entries })).filter(({ code }) => code === "sudden-drop");
    expect(reason?.args).toEqual({
      day: "2026-11-08",
      mlPer24h: 320,
      median: 1500,
      days: 3,
      overPercent: 70,
      andMl: 300,
    });
  });

  it.each([
    ["00:00", ["sudden-drop:2026-11-07"]],
    ["00:01", []],
  ])("placed at %s, the day that begins 72 h later is the first that counts: %j", (time, expected) => {
    const entries = [placed({ on: dated(0), at: time })];
    expect(drops(wholeDays([null, 1500, 1500, 1500, 1500, 1500, 320]), { entries })).toEqual(expected);
  });
});
