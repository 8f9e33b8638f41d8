import { describe, expect, it } from "vitest";
import { zone } from "#shared/day/instant.ts";
import { wholeDaysFrame } from "#shared/output/chart/chart-frame.ts";
import type { Reading } from "#shared/output/reading.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { fold } from "#shared/tube/fold.ts";
import { noon, utc, whole } from "#tests/factories/criterion.ts";
import { at, reading } from "#tests/factories/reading.ts";
import { capped, type Entry, F, placed, removed, upsized } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { recentChart, recentSpan } from "./recent-chart.ts";

function tubeOf(...entries: readonly Entry[]) {
  const [tube] = fold(history(...entries)).tubes;
  if (tube === undefined) throw new Error("the tube is placed");
  return tube;
}

const drain = placed({ kind: "abscess drain", side: "not sided", on: "2026-10-01" });
const asked = { zone: utc, now: noon, protocol: exampleProtocol };

describe("the days of a small chart", () => {
  it("are fourteen of the clinic, today among them, up to now", () => {
    expect(recentSpan(tubeOf(drain), asked)).toEqual({ from: at("2026-11-03T00:00Z"), to: noon });
  });

  it("begin at the clinic's midnight, whatever its clocks did since", () => {
    // New York left summer time on Sun 1 Nov 2026: midnight of the day before is four hours after that of Greenwich, not five.
    const now = at("2026-11-13T17:00Z");
    expect(recentSpan(tubeOf(drain), { zone: zone("America/New_York"), now }).from).toBe(
      at("2026-10-31T04:00Z"),
    );
  });

  it("end with the day on which the tube came out", () => {
    const out = tubeOf(drain, removed({ on: "2026-11-10" }));
    expect(recentSpan(out, asked)).toEqual({ from: at("2026-10-28T00:00Z"), to: at("2026-11-11T00:00Z") });
  });
});

describe("a small chart", () => {
  it("holds what ends in its days, and only tells since when the first of them ran", () => {
    const first = reading({
      id: "first",
      from: "since last emptying",
      to: at("2026-11-04T00:00Z"),
      zone: utc,
    });
    const chart = recentChart(tubeOf(drain), { ...asked, readings: [whole("2026-11-01", 25), first] });
    expect(chart.readings).toMatchObject([{ id: "first", from: at("2026-11-02T00:00Z") }]);
    expect(chart.span).toEqual({ from: at("2026-11-03T00:00Z"), to: noon });
    expect(chart.limit).toEqual({ means: "low day", underMl: 10 });
  });

  it("is as wide in time for a tube of three days as for any other, and begins where the tube did", () => {
    const young = tubeOf(placed({ kind: "abscess drain", side: "not sided", on: "2026-11-14", at: "09:00" }));
    const first = reading({ from: "since last emptying", to: at("2026-11-15T09:00Z"), zone: utc });
    const chart = recentChart(young, { ...asked, readings: [first] });
    expect(chart.span).toEqual({ from: at("2026-11-14T09:00Z"), to: noon });
    expect(wholeDaysFrame(chart, 14)).toMatchObject({ from: at("2026-11-03T00:00Z"), to: noon });
  });

  describe("of a placement without a clock time begins", () => {
    const begins = (...readings: readonly Reading[]) =>
      recentChart(tubeOf(drain), { ...asked, readings }).span?.from;
    const tenth = reading({ from: at("2026-11-10T10:00Z"), to: at("2026-11-10T20:00Z"), zone: utc });
    const aspirate = { ...whole("2026-11-05", 600), procedureAspirate: true };

    it("with the day of its first output", () => {
      expect(begins(tenth)).toBe(at("2026-11-10T00:00Z"));
      expect(begins(aspirate, tenth)).toBe(at("2026-11-10T00:00Z"));
    });

    it("with its days where anything older was logged, to the very midnight with which they begin", () => {
      expect(begins(whole("2026-10-20", 25), tenth)).toBe(at("2026-11-03T00:00Z"));
      expect(begins(whole("2026-11-02", 25), tenth)).toBe(at("2026-11-03T00:00Z"));
      const chart = recentChart(tubeOf(drain), {
        ...asked,
        readings: [
          whole("2026-11-02", 25),
          { ...whole("2026-11-02", 600), id: "p", procedureAspirate: true },
        ],
      });
      expect([chart.readings, chart.aspirates]).toEqual([[], []]);
    });
  });

  it("begins with what was logged before the clock time of its placement, and with that where nothing can be placed", () => {
    const young = tubeOf(placed({ kind: "abscess drain", side: "not sided", on: "2026-11-14", at: "09:00" }));
    const begins = (one: Reading) => recentChart(young, { ...asked, readings: [one] }).span?.from;
    const early = reading({ from: at("2026-11-14T08:00Z"), to: at("2026-11-14T20:00Z"), zone: utc });
    expect(begins(early)).toBe(at("2026-11-14T08:00Z"));
    expect(begins({ ...early, procedureAspirate: true })).toBe(at("2026-11-14T09:00Z"));
  });

  it("has the changes since its first midnight, and the tube's size", () => {
    const entries = [
      drain,
      upsized({ on: "2026-10-20", at: "10:00", size: F(10) }),
      capped({ on: "2026-11-03", at: "00:00" }),
      upsized({ on: "2026-11-10", at: "10:00", size: F(12) }),
    ];
    const chart = recentChart(tubeOf(...entries), { ...asked, readings: [whole("2026-11-05", 25)] });
    expect(chart.changes.map(({ kind, at: when }) => [kind, when])).toEqual([
      ["capped", at("2026-11-03T00:00Z")],
      ["upsized", at("2026-11-10T10:00Z")],
    ]);
    expect(chart.size).toEqual(F(12));
  });

  it("counts only those that cannot be placed, beside others that can", () => {
    const first = reading({
      id: "first",
      from: "since last emptying",
      to: at("2026-11-09T09:00Z"),
      zone: utc,
    });
    expect(
      recentChart(tubeOf(drain), { ...asked, readings: [first, whole("2026-11-10", 25)] }).unplaced,
    ).toBe(1);
    const old = { ...first, to: at("2026-11-03T00:00Z") };
    expect(recentChart(tubeOf(drain), { ...asked, readings: [old, whole("2026-11-10", 25)] }).unplaced).toBe(
      0,
    );
  });

  it("of a tube whose log fell silent is one gap; of one that has no log there is none", () => {
    const silent = recentChart(tubeOf(drain), { ...asked, readings: [whole("2026-11-01", 25)] });
    expect(silent.readings).toEqual([]);
    expect(silent.span).toEqual({ from: at("2026-11-03T00:00Z"), to: noon });
    expect(recentChart(tubeOf(drain), { ...asked, readings: [] }).span).toBeNull();
  });

  it("counts what cannot be placed in time and was logged in its days, and says so instead of drawing it", () => {
    const first = reading({ from: "since last emptying", to: at("2026-11-15T09:00Z"), zone: utc });
    expect(recentChart(tubeOf(drain), { ...asked, readings: [first] })).toMatchObject({
      span: null,
      unplaced: 1,
    });
    const old = { ...first, to: at("2026-11-02T09:00Z") };
    expect(recentChart(tubeOf(drain), { ...asked, readings: [old] }).unplaced).toBe(0);
  });

  it("draws neither of two readings that claim the same time as counted, and no aspirate as output", () => {
    const drawn = recentChart(tubeOf(drain), {
      ...asked,
      readings: [
        whole("2026-11-10", 25),
        { ...whole("2026-11-10", 30), id: "twice" },
        { ...whole("2026-11-05", 600), procedureAspirate: true },
      ],
    });
    expect(drawn.readings.map(({ net, because }) => [net, because])).toEqual([
      [null, ["overlap"]],
      [null, ["overlap"]],
    ]);
    expect(drawn.aspirates).toMatchObject([{ ul: 600_000 }]);
  });
});
