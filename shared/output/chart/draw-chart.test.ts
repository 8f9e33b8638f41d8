import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { instant, zone } from "#shared/day/instant.ts";
import { microlitres, millilitres } from "#shared/output/microlitre.ts";
import type { ChartFacts, ChartReading } from "./chart-facts.ts";
import { type ChartFrame, frameOf, frameWithin, niceStep, wholeDaysFrame } from "./chart-frame.ts";
import { drawChart } from "./draw-chart.ts";

const HOUR = 3_600_000;
const START = Date.UTC(2026, 10, 1);
/** So many hours after the start of 1 Nov 2026. */
const hour = (hours: number) => instant(START + hours * HOUR);

const reading = (
  id: string,
  [from, to]: readonly [number, number],
  rest: Partial<ChartReading> = {},
): ChartReading => ({
  id,
  from: hour(from),
  to: hour(to),
  drained: millilitres(30),
  net: millilitres(20),
  because: [],
  characters: [],
  ...rest,
});

const facts = (readings: readonly ChartReading[], rest: Partial<ChartFacts> = {}): ChartFacts => ({
  zone: zone("UTC"),
  span: { from: hour(0), to: hour(96) },
  readings,
  aspirates: [],
  unplaced: 0,
  changes: [],
  size: null,
  limit: null,
  band: null,
  ...rest,
});

/** Four days, -20 to 80 mL/24 h: an hour is a little over a percent wide, a millilitre a percent high. */
const frame: ChartFrame = { from: hour(0), to: hour(96), top: 80, bottom: -20, step: 20 };
const barOf = (one: ChartReading) => drawChart(facts([one]), frame).bars[0]!;

describe("a bar", () => {
  it("is as wide as its time and as high as its rate, with the flush on top", () => {
    // 48 of 96 hours; net 20 mL in 48 h is 10 mL/24 h, 30 that came out are 15.
    expect(barOf(reading("a", [24, 72]))).toMatchObject({
      counted: { x: 25, width: 50, y: 70, height: 10 },
      notCounted: { x: 25, width: 50, y: 65, height: 5 },
      doubtful: null,
      unknown: null,
      cut: false,
    });
  });

  it("has its volume as area: twice the time at half the rate is as large", () => {
    const area = (hours: number) => {
      const { counted } = barOf(reading("a", [0, hours], { drained: millilitres(20) }));
      return (counted?.width ?? 0) * (counted?.height ?? 0);
    };
    expect(area(48)).toBeCloseTo(area(24), 6);
    expect(area(48)).toBeGreaterThan(0);
  });

  it("hangs below zero where the net is negative; what came out stands over it and is not counted", () => {
    expect(barOf(reading("a", [0, 24], { drained: millilitres(20), net: millilitres(-10) }))).toMatchObject({
      counted: { y: 80, height: 10 },
      notCounted: { y: 60, height: 20 },
    });
  });

  it("has no flush where nothing but net came out, and no box of nothing", () => {
    expect(barOf(reading("a", [0, 24], { drained: millilitres(20) }))).toMatchObject({ notCounted: null });
    expect(barOf(reading("a", [0, 24], { drained: microlitres(0), net: microlitres(0) }))).toMatchObject({
      counted: null,
      notCounted: null,
      doubtful: null,
    });
  });

  it("whose net cannot be told is doubtful to all that came out; an unknown volume fills the height", () => {
    expect(barOf(reading("a", [0, 24], { net: null, because: ["flush-not-recorded"] }))).toMatchObject({
      counted: null,
      notCounted: null,
      doubtful: { y: 50, height: 30 },
      unknown: null,
    });
    expect(
      barOf(reading("a", [0, 24], { net: null, drained: null, because: ["volume-unknown"] })),
    ).toMatchObject({ counted: null, doubtful: null, unknown: { y: 0, height: 100 } });
  });

  it("that reaches over the frame is cut there, above and below", () => {
    expect(barOf(reading("a", [0, 24], { drained: millilitres(80), net: millilitres(80) })).cut).toBe(false);
    expect(barOf(reading("a", [0, 24], { drained: millilitres(81), net: millilitres(80) }))).toMatchObject({
      cut: true,
      counted: { y: 0, height: 80 },
    });
    expect(barOf(reading("a", [0, 24], { net: millilitres(-20) })).cut).toBe(false);
    expect(barOf(reading("a", [0, 24], { net: millilitres(-21) })).cut).toBe(true);
  });

  it("is drawn as far as it lies in the frame, and not at all outside", () => {
    const late = { ...frame, from: hour(48) };
    const { bars } = drawChart(facts([reading("a", [0, 48]), reading("b", [24, 72])]), late);
    expect(bars.map((bar) => bar.reading.id)).toEqual(["b"]);
    expect(bars[0]?.counted).toMatchObject({ x: 0, width: 50 });
  });

  it("has its letters in the middle over it, where its look is new", () => {
    const { bars } = drawChart(
      facts([
        reading("a", [0, 24], { characters: ["serous"] }),
        reading("b", [24, 48], { characters: ["serous"] }),
        reading("c", [48, 72], { characters: ["serous", "debris"] }),
        reading("d", [72, 96]),
      ]),
      frame,
    );
    expect(bars.map(({ letters }) => letters)).toEqual([50, null, 50, null]);
    expect(bars.map(({ middle }) => middle)).toEqual([12.5, 37.5, 62.5, 87.5]);
  });
});

describe("what stands beside the bars", () => {
  it("gaps are the time that no reading covers, also where readings lie over one another", () => {
    const { gaps } = drawChart(
      facts([reading("a", [24, 60]), reading("b", [30, 36]), reading("c", [72, 84])]),
      frame,
    );
    expect(gaps).toEqual([
      { x: 0, width: 25, y: 0, height: 100 },
      { x: 62.5, width: 12.5, y: 0, height: 100 },
      { x: 87.5, width: 12.5, y: 0, height: 100 },
    ]);
    expect(drawChart(facts([reading("a", [0, 96])]), frame).gaps).toEqual([]);
    expect(drawChart(facts([], { span: null }), frame).gaps).toEqual([]);
    // A quarter of an hour is 0.26 percent, and would not be seen.
    expect(drawChart(facts([reading("a", [0.25, 96])]), frame).gaps).toEqual([]);
  });

  it("zero, the row's limit, and a line at each step", () => {
    const drawing = drawChart(facts([], { limit: { means: "low day", underMl: 10 } }), frame);
    expect(drawing).toMatchObject({ zero: 80, limit: 70 });
    expect(drawing.lines).toEqual([
      { ml: -20, y: 100 },
      { ml: 0, y: 80 },
      { ml: 20, y: 60 },
      { ml: 40, y: 40 },
      { ml: 60, y: 20 },
      { ml: 80, y: 0 },
    ]);
    expect(drawChart(facts([]), frame).limit).toBeNull();
  });

  it("changes and aspirates at their time, if it is in the frame", () => {
    const drawing = drawChart(
      facts([], {
        changes: [
          { at: hour(-1), kind: "capped" },
          { at: hour(72), kind: "upsized" },
        ],
        aspirates: [{ id: "p", at: hour(96), ul: null }],
      }),
      frame,
    );
    expect(drawing.changes).toEqual([{ at: hour(72), kind: "upsized", x: 75 }]);
    expect(drawing.aspirates).toEqual([{ id: "p", at: hour(96), ul: null, x: 100 }]);
  });

  it("what is at the very beginning of the frame stands in it, what comes after its end does not", () => {
    const drawing = drawChart(
      facts([reading("late", [96, 120])], {
        changes: [
          { at: hour(0), kind: "capped" },
          { at: hour(97), kind: "upsized" },
        ],
        aspirates: [{ id: "p", at: hour(97), ul: null }],
      }),
      frame,
    );
    expect(drawing.bars).toEqual([]);
    expect(drawing.changes).toEqual([{ at: hour(0), kind: "capped", x: 0 }]);
    expect(drawing.aspirates).toEqual([]);
  });

  it("the band runs between its two lines, and is cut where the frame begins", () => {
    const band = { from: hour(0), to: hour(96), steepest: [60, 20], flattest: [40, 40] } as const;
    expect(drawChart(facts([], { band }), frame).band).toEqual([
      { x: 0, y: 20 },
      { x: 100, y: 60 },
      { x: 100, y: 40 },
      { x: 0, y: 40 },
    ]);
    expect(drawChart(facts([], { band }), { ...frame, from: hour(48) }).band?.[0]).toEqual({ x: 0, y: 40 });
    expect(drawChart(facts([], { band }), { ...frame, from: hour(96), to: hour(120) }).band).toBeNull();
  });

  it("days are named, seven at the most", () => {
    const named = (days: number) =>
      drawChart(facts([]), { ...frame, to: hour(24 * days) }).days.map(({ day }) => day);
    expect(named(3)).toEqual(["2026-11-01", "2026-11-02", "2026-11-03"]);
    expect(named(7)).toHaveLength(7);
    expect(named(8)).toEqual(["2026-11-01", "2026-11-03", "2026-11-05", "2026-11-07"]);
    const halfDay = drawChart(facts([]), { ...frame, from: hour(12), to: hour(60) });
    expect(halfDay.days).toEqual([
      { day: "2026-11-02", x: 25 },
      { day: "2026-11-03", x: 75 },
    ]);
  });
});

describe("a frame", () => {
  it.each([
    [1, 1],
    [1.1, 2],
    [3, 5],
    [6, 10],
    [20, 20],
    [21, 50],
    [0.3, 0.5],
  ])("steps by 1, 2 or 5 of a power of ten: %d by %d", (value, step) => {
    expect(niceStep(value)).toBeCloseTo(step, 10);
  });

  it("reaches from zero, or the lowest net, to the highest bar or limit", () => {
    // 30 mL came out in 24 hours: a step of 5.
    expect(frameOf([facts([reading("a", [0, 24])])], 21)).toEqual({
      from: hour(0),
      to: hour(96),
      top: 30,
      bottom: 0,
      step: 5,
    });
    const down = [reading("a", [0, 24], { net: millilitres(-12) })];
    expect(frameOf([facts(down)], 21)).toMatchObject({ top: 30, bottom: -20, step: 10 });
    const limit = { means: "alarm", underMl: 100 } as const;
    expect(frameOf([facts([reading("a", [0, 24])], { limit })], 21)).toMatchObject({ top: 100, step: 20 });
  });

  it("is not stretched by a few minutes, which are drawn cut", () => {
    const short = reading("b", [24, 24.5]);
    const one = frameOf([facts([reading("a", [0, 24]), short])], 21);
    expect(one).toMatchObject({ top: 30 });
    expect(drawChart(facts([short]), one!).bars[0]?.cut).toBe(true);
    expect(frameOf([facts([reading("b", [24, 25])])], 21)).toMatchObject({ top: 800 });
  });

  it("shows the last days, the day in progress one of them", () => {
    const on = (to: number) => facts([], { span: { from: hour(0), to: hour(to) } });
    expect(frameOf([on(95)], 2)).toMatchObject({ from: hour(72 - 24), to: hour(95) });
    expect(frameOf([on(95)], 9)).toMatchObject({ from: hour(0), to: hour(95) });
  });

  it("is no higher than what it shows: what ends where it begins or begins where it ends sets no scale", () => {
    const shown = reading("shown", [24, 48], { drained: millilitres(20) });
    const beside = [
      reading("before", [0, 24], { drained: millilitres(900) }),
      shown,
      reading("after", [48, 72], { drained: millilitres(900) }),
    ];
    const within = (readings: readonly ChartReading[]) =>
      frameWithin([facts(readings)], { from: hour(24), to: hour(48) });
    expect(within([shown]).top).toBe(20);
    expect(within(beside)).toEqual(within([shown]));
    // 20 of its hours lie before and after: 900 mL in 44 h are 490.9 mL/24 h.
    expect(within([reading("over", [4, 48], { drained: millilitres(900) })]).top).toBe(500);
    expect(within([reading("over", [24, 68], { drained: millilitres(900) })]).top).toBe(500);
  });

  it("of a list is whole days wide and as high as the bars in it; none where nothing is logged", () => {
    const chart = facts([reading("a", [72, 96], { drained: millilitres(90) })]);
    expect(wholeDaysFrame(chart, 14)).toMatchObject({
      from: hour(24 * (4 - 14)),
      to: hour(96),
      top: 100,
      bottom: 0,
    });
    expect(wholeDaysFrame(facts([], { span: null }), 14)).toBeNull();
  });

  it("is one for several tubes, and none where nothing is logged", () => {
    const early = facts([reading("a", [0, 24])], { span: { from: hour(0), to: hour(24) } });
    const late = facts([reading("b", [48, 72], { drained: millilitres(90) })]);
    expect(frameOf([early, late], 21)).toMatchObject({ from: hour(0), to: hour(96), top: 100 });
    expect(frameOf([facts([], { span: null }), early], 21)).toEqual(frameOf([early], 21));
    expect(frameOf([facts([], { span: null })], 21)).toBeNull();
  });

  it("holds every bar of an hour or more that it shows, whatever was measured", () => {
    const any = fc.array(
      fc.record({
        hours: fc.integer({ min: 1, max: 60 }),
        net: fc.integer({ min: -50, max: 900 }),
        more: fc.nat(60),
      }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(any, (made) => {
        let at = 0;
        const readings = made.map(({ hours, net, more }, index) => {
          const one = reading(`r${index}`, [at, at + hours], {
            net: millilitres(net),
            drained: millilitres(Math.max(0, net + more)),
          });
          at += hours;
          return one;
        });
        const chart = facts(readings, { span: { from: hour(0), to: hour(at) } });
        const round = frameOf([chart], 400);
        if (round === null) throw new Error("no frame");
        const { bars, gaps } = drawChart(chart, round);
        expect(bars).toHaveLength(readings.length);
        expect(gaps).toEqual([]);
        for (const { cut, counted, notCounted } of bars) {
          expect(cut).toBe(false);
          for (const box of [counted, notCounted]) {
            if (box === null) continue;
            expect(box.y).toBeGreaterThanOrEqual(0);
            expect(box.y + box.height).toBeLessThanOrEqual(100.02);
            expect(box.x + box.width).toBeLessThanOrEqual(100.02);
          }
        }
      }),
    );
  });
});
