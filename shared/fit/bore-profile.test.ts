import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boreProfile } from "#shared/fit/bore-profile.ts";
import type { TubeInside } from "#shared/fit/inside.ts";
import { type Passage, wireOf } from "#shared/fit/passage.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { blank, bore, inch, someFact, someLength, somePassage } from "#tests/factories/tube-inside.ts";

const eightFrench = confirmed(lengthOf(8, "F"));
const rows = {
  clearance: inch(0),
  boreTolerance: undefined,
  outsideTolerance: { wire: inch(0), device: undefined },
};
const through = (wire: number, inside: Partial<TubeInside>): Passage => ({
  goes: wireOf(confirmed(inch(wire))),
  inside: { ...blank, ...inside },
  rows,
});
const profile = (wire: number, inside: Partial<TubeInside>) =>
  boreProfile(through(wire, inside), eightFrench);

describe("parts", () => {
  it("run from the hub to the tip without a gap; the taper leads from the shaft to the end hole", () => {
    const { segments } = profile(0.035, { bores: [bore("shaft", 0.075), bore("end hole", 0.038)] });
    expect(segments.map((segment) => segment.part)).toEqual(["hub", "shaft", "taper", "end hole"]);
    expect(segments[0]?.from).toBe(0);
    expect(segments.at(-1)?.to).toBe(1);
    for (const [index, segment] of segments.slice(1).entries())
      expect(segment.from).toBe(segments[index]?.to);
    const taper = segments.find((segment) => segment.part === "taper");
    expect(taper?.start.inner).toMatchObject({ most: inch(0.075) });
    expect(taper?.end.inner).toMatchObject({ most: inch(0.038) });
  });

  it("a stopcock and a valve are there only where recorded", () => {
    const { segments } = profile(0.035, { bores: [bore("valve", 0.05), bore("stopcock", 0.05)] });
    expect(segments.map((segment) => segment.part)).toEqual([
      "stopcock",
      "hub",
      "valve",
      "shaft",
      "taper",
      "end hole",
    ]);
  });

  it("only the shaft's outside is recorded; French never becomes an inside", () => {
    const { segments } = profile(0.035, {});
    const shaft = segments.find((segment) => segment.part === "shaft");
    expect(shaft?.start).toEqual({
      outer: { width: lengthOf(8, "F"), recorded: true },
      inner: { known: "unknown" },
    });
    for (const segment of segments) {
      expect(segment.start.inner.known).toBe("unknown");
      if (segment.part === "hub") expect(segment.start.outer.recorded).toBe(false);
    }
  });

  it("a bore has both extremes of its tolerance, and says when that is unknown", () => {
    const { segments } = profile(0.035, { bores: [bore("hub", 0.05, 0.002), bore("end hole", 0.04, null)] });
    expect(segments[0]?.start.inner).toEqual({
      known: "measured",
      least: inch(0.048),
      most: inch(0.052),
      certainty: "confirmed",
      toleranceKnown: true,
    });
    expect(segments.at(-1)?.end.inner).toMatchObject({ least: inch(0.04), toleranceKnown: false });
  });

  it("of two bores at one place the narrower is drawn, and none is drawn under nothing", () => {
    const wide = profile(0.035, { bores: [bore("hub", 0.06), bore("hub", 0.04)] });
    expect(wide.segments[0]?.start.inner).toMatchObject({ most: inch(0.04) });
    const loose = profile(0.035, { bores: [bore("hub", 0.02, 0.03)] });
    expect(loose.segments[0]?.start.inner).toMatchObject({ least: 0, most: inch(0.05) });
  });

  it("a label stands for every place that is not measured", () => {
    const { segments } = profile(0.035, { takes: confirmed(inch(0.038)), bores: [bore("shaft", 0.075)] });
    expect(segments.map((segment) => segment.start.inner.known)).toEqual([
      "by label",
      "measured",
      "measured",
      "by label",
    ]);
  });
});

describe("the wire", () => {
  const endHole = (inside: number, tolerance: number | null = 0) => ({
    bores: [bore("end hole", inside, tolerance)],
  });

  it("goes through where it passes", () => {
    expect(profile(0.035, endHole(0.038)).wire).toEqual({ width: inch(0.035), to: 1, ends: "through" });
  });

  it("stops where it stops: at the end hole, its rule at the same place", () => {
    const { wire, deciding, segments } = profile(0.038, endHole(0.035));
    expect(wire).toMatchObject({ ends: "stopped", to: segments.at(-1)?.from });
    expect(deciding).toMatchObject({ place: "end hole", at: segments.at(-1)?.from });
    expect(deciding?.ring).toMatchObject({ wire: inch(0.038), inner: { most: inch(0.035) } });
  });

  it("stops within the taper where the wall meets it", () => {
    const { wire, segments } = profile(0.04, { bores: [bore("shaft", 0.06), bore("end hole", 0.03)] });
    const taper = segments.find((segment) => segment.part === "taper");
    // 0.04 lies two thirds of the way from 0.06 down to 0.03.
    expect(wire?.to).toBeCloseTo((taper?.from ?? 0) + (2 / 3) * ((taper?.to ?? 0) - (taper?.from ?? 0)), 10);
  });

  it("comes to the end hole where only the clearance stops it", () => {
    const passage = through(0.035, { bores: [bore("shaft", 0.075), bore("end hole", 0.0355)] });
    const tight = { ...passage, rows: { ...rows, clearance: inch(0.001) } };
    const { wire, segments } = boreProfile(tight, eightFrench);
    expect(wire).toMatchObject({ to: segments.at(-1)?.from, ends: "stopped" });
  });

  it("stops at the first place, also when a later one is narrower and decides", () => {
    const { wire, deciding } = profile(0.04, { bores: [bore("hub", 0.038), bore("end hole", 0.03)] });
    expect(wire).toMatchObject({ to: 0, ends: "stopped" });
    expect(deciding?.place).toBe("end hole");
  });

  it("comes to the very end of a closed tip", () => {
    const { wire, deciding, segments } = profile(0.035, { endHole: confirmed("closed") });
    expect(wire).toMatchObject({ to: 1, ends: "stopped" });
    expect(deciding).toMatchObject({ place: "end hole", at: 1, ring: { inner: { known: "closed" } } });
    expect(segments.at(-1)?.end.inner).toEqual({ known: "closed", certainty: "confirmed" });
  });

  it("a label that stops it too leaves it to stop at the place", () => {
    const { wire, segments } = profile(0.038, { ...endHole(0.035), takes: confirmed(inch(0.035)) });
    expect(wire).toMatchObject({ ends: "stopped", to: segments.at(-1)?.from });
  });

  it("a label names no place: the wire stops where it goes in", () => {
    const { wire, deciding } = profile(0.038, { takes: confirmed(inch(0.035)) });
    expect(wire).toMatchObject({ to: 0, ends: "stopped" });
    expect(deciding).toMatchObject({
      place: "whole path",
      at: null,
      ring: { inner: { known: "by label", width: inch(0.035) }, wire: inch(0.038) },
    });
  });

  it("doubt shows both extremes in the ring", () => {
    const { wire, deciding, segments } = profile(0.035, endHole(0.035, 0.002));
    expect(wire).toMatchObject({ to: segments.at(-1)?.from, ends: "in doubt" });
    expect(deciding?.ring.inner).toMatchObject({ least: inch(0.033), most: inch(0.037) });
  });

  it("reaches no further than the first unknown when nobody can tell", () => {
    const { wire, deciding, segments } = profile(0.035, { bores: [bore("hub", 0.05)] });
    expect(wire).toMatchObject({ to: segments[1]?.from, ends: "unknown" });
    expect(deciding).toBeNull();
  });

  it("is not drawn when its size is unknown", () => {
    const passage = { ...through(0.035, endHole(0.05)), goes: wireOf(unknownFact) };
    expect(boreProfile(passage, eightFrench)).toMatchObject({ wire: null, deciding: null });
  });
});

it("holds everything in the drawing, whatever is recorded", () => {
  fc.assert(
    fc.property(somePassage, someFact(someLength), (of, outside) => {
      const { across, segments, wire, deciding, bySize } = boreProfile(of, outside);
      expect(Number.isFinite(across) && across > 0).toBe(true);
      for (const { outer, inner } of segments.flatMap((segment) => [segment.start, segment.end])) {
        expect(outer.width).toBeLessThanOrEqual(across);
        if (inner.known === "measured") expect(inner.most).toBeLessThanOrEqual(across);
        if (inner.known === "by label") expect(inner.width).toBeLessThanOrEqual(across);
      }
      expect(wire === null).toBe(of.goes.outside.certainty === "unknown");
      if (wire !== null) {
        expect(wire.width).toBeLessThanOrEqual(across);
        expect(wire.to).toBeGreaterThanOrEqual(0);
        expect(wire.to).toBeLessThanOrEqual(1);
        expect(wire.ends === "through").toBe(bySize.verdict === "passes");
      }
      expect(deciding === null).toBe(bySize.verdict === "cannot tell");
    }),
  );
});
