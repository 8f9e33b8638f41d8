import { describe, expect, it } from "vitest";
import { boreProfile } from "#shared/fit/bore-profile.ts";
import { compareInside } from "#shared/fit/compare-inside.ts";
import type { Place, TubeInside } from "#shared/fit/inside.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import { type Passage, wireOf } from "#shared/fit/passage.ts";
import { innerAt, widestOf } from "#shared/fit/profile-inner.ts";
import { outsides } from "#shared/fit/profile-outsides.ts";
import { type Cut, segmentsOf } from "#shared/fit/profile-segments.ts";
import { positionOf, wireBar } from "#shared/fit/profile-wire.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { F } from "#tests/factories/coaxial.ts";
import { blank, bore, bores, inch, noRows, reported, rows, takes } from "#tests/factories/tube-inside.ts";

const through = (inside: TubeInside, size = 0.035): Passage => ({
  goes: wireOf(confirmed(inch(size))),
  inside,
  rows: { ...rows, clearance: inch(0) },
});

describe("outer widths", () => {
  const widths = (of: { outside?: number; wire?: number; at?: Partial<Record<Place, number>> }) => {
    const { at, across } = outsides({
      outside: of.outside as Length | undefined,
      wire: of.wire ?? 0,
      widestAt: (place) => of.at?.[place] ?? 0,
    });
    return { hub: at("hub"), valve: at("valve"), shaft: at("shaft"), tip: at("end hole"), across };
  };
  const drawn = (width: number) => ({ width, recorded: false });

  it("the shaft is as recorded; hub 1.6 and tip 0.6 of it, for the eye", () => {
    expect(widths({ outside: 100 })).toEqual({
      hub: drawn(160),
      valve: drawn(160),
      shaft: { width: 100, recorded: true },
      tip: drawn(60),
      across: 160,
    });
  });

  it("stand 1.3 off an inside that is wider than that", () => {
    // 1.3 x 150 = 195, over 160; 1.3 x 80 = 104, over 60.
    expect(widths({ outside: 100, at: { hub: 150, "end hole": 80 } })).toMatchObject({
      hub: drawn(195),
      valve: drawn(160),
      tip: drawn(104),
      across: 195,
    });
  });

  it("an outside that nobody knows is drawn 1.3 about the widest", () => {
    // 1.3 x 100 = 130; 1.6 x 130 = 208; 0.6 x 130 = 78.
    expect(widths({ wire: 100, at: { shaft: 50 } })).toEqual({
      hub: drawn(208),
      valve: drawn(208),
      shaft: drawn(130),
      tip: drawn(78),
      across: 208,
    });
    expect(widths({})).toMatchObject({ shaft: drawn(1), across: 1.6 });
  });

  it("a wire wider than everything still fits the drawing", () => {
    expect(widths({ outside: 100, wire: 200 }).across).toBe(260);
  });
});

describe("the inside at a place", () => {
  const closed: TubeInside = { ...takes(0.038), endHole: confirmed("closed") };

  it("a closed tip is closed at the end hole and nowhere else", () => {
    expect(innerAt("end hole", through(closed))).toEqual({ known: "closed", certainty: "confirmed" });
    for (const place of ["hub", "shaft"] as const)
      expect(innerAt(place, through(closed))).toMatchObject({ known: "by label" });
  });

  it.each([confirmed("open" as const), unknownFact])("a tip that is %j is not closed", (endHole) => {
    expect(innerAt("end hole", through({ ...takes(0.038), endHole }))).toEqual({
      known: "by label",
      width: inch(0.038),
      certainty: "confirmed",
    });
    expect(innerAt("end hole", through({ ...blank, endHole }))).toEqual({ known: "unknown" });
  });

  it("a bore without a tolerance takes the row's, 0.002; without a row it says so", () => {
    const inside = bores(bore("hub", reported(inch(0.04)), null));
    expect(innerAt("hub", through(inside))).toEqual({
      known: "measured",
      least: inch(0.038),
      most: inch(0.042),
      certainty: "reported",
      toleranceKnown: true,
    });
    expect(innerAt("hub", { ...through(inside), rows: noRows })).toMatchObject({
      least: inch(0.04),
      most: inch(0.04),
      toleranceKnown: false,
    });
  });

  it("a bore that nobody measured falls back to the label", () => {
    expect(innerAt("hub", through({ ...takes(0.038), bores: [bore("hub", unknownFact)] }))).toMatchObject({
      known: "by label",
    });
  });

  it("is drawn as wide as it may be, and shut where nothing is known to be open", () => {
    expect(widestOf(innerAt("hub", through(bores(bore("hub", 0.04, 0.001)))))).toBe(inch(0.041));
    expect(widestOf(innerAt("hub", through(takes(0.038))))).toBe(inch(0.038));
    expect(widestOf({ known: "closed", certainty: "confirmed" })).toBe(0);
    expect(widestOf({ known: "unknown" })).toBe(0);
  });
});

const segments = (inside: TubeInside) => {
  const cutAt = (place: Place): Cut => ({
    outer: { width: 1, recorded: false },
    inner: innerAt(place, through(inside)),
  });
  return segmentsOf(inside, cutAt);
};

it("parts take their share: hub 3, shaft 9, taper 4, end hole 1 of 17, a stopcock and a valve 2 more each", () => {
  expect(segments(blank).map(({ part, from, to }) => [part, from * 17, to * 17])).toEqual([
    ["hub", 0, 3],
    ["shaft", 3, 12],
    ["taper", 12, 16],
    ["end hole", 16, 17],
  ]);
  const both = segments(bores(bore("valve", 0.05), bore("stopcock", 0.05)));
  expect(both.map(({ from }) => from * 21)).toEqual([0, 2, 5, 7, 16, 20]);
});

describe("where the wire ends", () => {
  const bar = (inside: TubeInside, size: number) => {
    const passage = through(inside, size);
    return wireBar(passage.goes.outside, passageBySize(passage), segments(inside));
  };
  const shaftAndTip = (shaft: number, tip: number, tolerance = 0) =>
    bores(bore("shaft", shaft, tolerance), bore("end hole", tip, tolerance));

  it("a comparison stands at its place: a bore where it was measured, a closed tip at the end, a label at the start", () => {
    const inside: TubeInside = {
      ...takes(0.038),
      bores: [bore("hub", 0.05), bore("shaft", 0.05)],
      endHole: confirmed("closed"),
    };
    const compared = compareInside(inch(0.035), through(inside));
    expect(compared.map((each) => positionOf(each, segments(inside)) * 17)).toEqual([0, 3, 17, 0]);
  });

  it("as thick as the shaft it stops where the taper begins; thicker, in the shaft itself", () => {
    // The taper runs from 12 to 16 of 17. Exact bores: a shaft of 0.05 lets 0.05 in.
    expect((bar(shaftAndTip(0.05, 0.03), 0.05)?.to ?? 0) * 17).toBeCloseTo(12, 10);
    expect((bar(shaftAndTip(0.05, 0.03), 0.04)?.to ?? 0) * 17).toBeCloseTo(14, 10);
    expect(bar(shaftAndTip(0.05, 0.03), 0.051)).toMatchObject({ to: 3 / 17, ends: "stopped" });
  });

  it("stopped at the hub it never comes to the taper, though it would stop there too", () => {
    const inside = bores(bore("hub", 0.03), bore("shaft", 0.05), bore("end hole", 0.03));
    expect(bar(inside, 0.04)).toMatchObject({ to: 0, ends: "stopped" });
  });

  it("a shaft that is only told of stops nothing: the end hole does", () => {
    const inside = bores(bore("shaft", reported(inch(0.035))), bore("end hole", 0.03));
    expect(bar(inside, 0.04)).toMatchObject({ to: 16 / 17, ends: "stopped" });
  });

  it("where the shaft was not measured nobody can say where in the taper it stops", () => {
    expect(bar(bores(bore("end hole", 0.03)), 0.04)).toMatchObject({ to: 16 / 17, ends: "stopped" });
    const shaftOnly: TubeInside = { ...bores(bore("shaft", 0.05)), endHole: confirmed("closed") };
    expect(bar(shaftOnly, 0.04)).toMatchObject({ to: 1, ends: "stopped" });
  });

  it("a place that stops it goes before a label that does", () => {
    const inside = { ...takes(0.03), bores: [bore("end hole", 0.03)] };
    expect(bar(inside, 0.04)).toMatchObject({ to: 16 / 17, ends: "stopped" });
    expect(bar(takes(0.03), 0.04)).toMatchObject({ to: 0, ends: "stopped" });
  });

  it("doubt ends at the first doubt, though a narrower one follows", () => {
    const inside = bores(bore("shaft", 0.041, 0.002), bore("end hole", 0.0405, 0.002));
    expect(bar(inside, 0.04)).toMatchObject({ to: 3 / 17, ends: "in doubt" });
  });

  it("nobody can tell: it comes to what is not known, else nowhere", () => {
    expect(bar(bores(bore("hub", 0.05), bore("shaft", 0.05)), 0.04)).toMatchObject({
      to: 16 / 17,
      ends: "unknown",
    });
    expect(bar(blank, 0.04)).toMatchObject({ to: 0, ends: "unknown" });
  });

  it("is not drawn of an unknown size", () => {
    expect(wireBar(unknownFact, passageBySize(through(blank)), segments(blank))).toBeNull();
  });
});

describe("the place that decides", () => {
  const deciding = (inside: TubeInside, size: number) =>
    boreProfile(through(inside, size), confirmed(F(8))).deciding;

  it("is cut where it is: a hub has an outside that nobody records", () => {
    expect(deciding(bores(bore("hub", 0.03), bore("end hole", 0.05)), 0.04)).toEqual({
      place: "hub",
      at: 0,
      ring: {
        outer: { width: F(8) * 1.6, recorded: false },
        inner: {
          known: "measured",
          least: inch(0.03),
          most: inch(0.03),
          certainty: "confirmed",
          toleranceKnown: true,
        },
        wire: inch(0.04),
      },
    });
  });

  it("of a label is cut at the shaft, whose outside is recorded", () => {
    expect(deciding(takes(0.038), 0.035)).toEqual({
      place: "whole path",
      at: null,
      ring: {
        outer: { width: F(8), recorded: true },
        inner: { known: "by label", width: inch(0.038), certainty: "confirmed" },
        wire: inch(0.035),
      },
    });
  });
});
