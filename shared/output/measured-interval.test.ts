import { describe, expect, it } from "vitest";
import { at, flush, reading } from "#tests/factories/reading.ts";
import { type FlushOrdered, measuredIntervals, overlaps } from "./measured-interval.ts";
import type { Reading } from "./reading.ts";

/** One of Mon 2 Nov 2026, from one hour to another. */
const hour = (time: string) => at(`2026-11-02T${time}Z`);
const ran = (id: string, from: string | null, to: string, said: Partial<Reading> = {}): Reading =>
  reading({ id, from: from === null ? "since last emptying" : hour(from), to: hour(to), ...said });
const context = { flushOrdered: false, placedAt: null, now: hour("23:00") };
const measured = (readings: readonly Reading[], more: Partial<typeof context> & object = {}) =>
  measuredIntervals(readings, { ...context, ...more });
const problemsOf = (...readings: readonly Reading[]) =>
  measured(readings).problems.map(({ code, readings: [id] }) => [code, id]);

describe("the time that a reading ran over", () => {
  it("since last emptying is since the end of the one before, in whatever order they were put down", () => {
    const [a, b, c] = [ran("a", "08:00", "10:00"), ran("b", null, "12:00"), ran("c", null, "15:00")];
    for (const all of [
      [a, b, c],
      [c, b, a],
      [b, c, a],
      [c, a, b],
    ])
      expect(measured(all).intervals.map(({ from, to }) => [from, to])).toEqual([
        [hour("08:00"), hour("10:00")],
        [hour("10:00"), hour("12:00")],
        [hour("12:00"), hour("15:00")],
      ]);
  });

  it("of two of one time the one with the smaller id comes first, in whatever order they were put down", () => {
    const [a, b, c] = [ran("a", "08:00", "10:00"), ran("b", "08:00", "10:00"), ran("c", "08:00", "10:00")];
    for (const all of [
      [a, b, c],
      [c, b, a],
      [b, c, a],
    ])
      expect(measured(all).intervals.map((one) => one.reading.id)).toEqual(["a", "b", "c"]);
  });

  it.each([
    ["11:59", "12:00", "placed"],
    ["12:00", "12:00", "no-start"],
    ["12:01", "12:00", "no-start"],
  ])("from %s to %s: %s", (from, to, expected) => {
    const { intervals, problems } = measured([ran("a", from, to)]);
    expect(intervals).toHaveLength(expected === "placed" ? 1 : 0);
    expect(problems).toEqual(expected === "placed" ? [] : [{ code: "no-start", readings: ["a"] }]);
  });

  it("the first since last emptying begins with the placement, and nowhere before it", () => {
    const first = [ran("a", null, "12:00")];
    const placed = (time: string) =>
      measuredIntervals(first, { ...context, placedAt: hour(time) }).intervals.map(({ from }) => from);
    expect(placed("11:59")).toEqual([hour("11:59")]);
    expect(placed("12:00")).toEqual([]);
    expect(measured(first).problems).toEqual([{ code: "no-start", readings: ["a"] }]);
  });

  it("problems stand by the ids of their readings, in whatever order they were put down", () => {
    const coming = (id: string) => ran(id, "22:00", "23:01");
    const expected = [
      ["ends-in-future", "a"],
      ["ends-in-future", "b"],
      ["no-start", "c"],
    ];
    const none = ran("c", null, "10:00");
    expect(problemsOf(coming("a"), coming("b"), none)).toEqual(expected);
    expect(problemsOf(none, coming("b"), coming("a"))).toEqual(expected);
    expect(problemsOf(coming("b"), none, coming("a"))).toEqual(expected);
  });
});

describe("hard case 31: a flush that was ordered for a time", () => {
  const unwritten = ran("a", "10:00", "12:00", { flushGiven: "not recorded" });
  const span = (from: string, to: string | null) => ({ from: hour(from), to: to === null ? null : hour(to) });
  it.each<[string, FlushOrdered, string]>([
    ["over all of it", [span("09:00", "13:00")], "cannot tell"],
    ["and still", [span("09:00", null)], "cannot tell"],
    ["up to its beginning", [span("09:00", "10:00")], "known"],
    ["up to a minute after its beginning", [span("09:00", "10:01")], "cannot tell"],
    ["from a minute before its end", [span("11:59", null)], "cannot tell"],
    ["from its end", [span("12:00", null)], "known"],
    ["at another time and then over it", [span("01:00", "02:00"), span("11:00", null)], "cannot tell"],
    ["at no time", [], "known"],
  ])("%s", (_name, flushOrdered, expected) => {
    const { intervals } = measuredIntervals([unwritten], { ...context, flushOrdered });
    expect(intervals[0]?.net.kind).toBe(expected);
  });

  it("what was written down counts, ordered or not", () => {
    const { intervals } = measured([ran("a", "10:00", "12:00", { flushGiven: flush(5) })]);
    expect(intervals[0]?.net).toEqual({ kind: "known", ul: 20_000 });
  });
});

describe("time that is claimed twice", () => {
  it("is that of every reading within a longer one, named with it", () => {
    const all = [ran("day", "00:00", "20:00"), ran("a", "02:00", "03:00"), ran("b", "04:00", "05:00")];
    expect(overlaps(measured(all).intervals)).toEqual([
      { code: "overlap", from: hour("02:00"), to: hour("03:00"), readings: ["day", "a"] },
      { code: "overlap", from: hour("04:00"), to: hour("05:00"), readings: ["day", "b"] },
    ]);
  });
});
