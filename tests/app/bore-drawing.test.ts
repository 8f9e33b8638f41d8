import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { BoreDrawing } from "#app/bore/bore-drawing.tsx";
import { SIDE, scaleOf } from "#app/bore/scale.ts";
import { boreProfile } from "#shared/fit/bore-profile.ts";
import type { TubeInside } from "#shared/fit/inside.ts";
import { wireOf } from "#shared/fit/passage.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { blank, bore, bores, inch, takes } from "#tests/factories/tube-inside.ts";

const rows = {
  clearance: inch(0),
  boreTolerance: inch(0),
  outsideTolerance: { wire: inch(0), device: undefined },
};
const eightFrench = confirmed(lengthOf(8, "F"));
const profileOf = (wire: number | null, inside: TubeInside) =>
  boreProfile(
    { goes: wireOf(wire === null ? unknownFact : confirmed(inch(wire))), inside, rows },
    eightFrench,
  );
const draw = (wire: number | null, inside: TubeInside): string =>
  renderToStaticMarkup(
    createElement(BoreDrawing, { profile: profileOf(wire, inside), of: "The tube in place" }),
  );

/** Left edge and width of the wire's bar. */
const barIn = (markup: string) => {
  const found = /<rect class="[^"]*wire[^"]*" x="0" y="[^"]*" width="([\d.]+)"/.exec(markup);
  return found === null ? null : Number(found[1]);
};

const measured = bores(bore("hub", 0.079), bore("shaft", 0.075), bore("end hole", 0.035));

describe("the drawing of a wire in a tube", () => {
  it("carries its sentence for those who hear it", () => {
    expect(draw(0.038, measured)).toContain(
      '<desc id="_R_0_desc">Does not pass: at the end hole the wire is 0.003 in (0.076 mm) too thick.</desc>',
    );
  });

  it("ends the bar before the rule where it stops, and runs it out over the tip where it passes", () => {
    const { deciding, across } = profileOf(0.038, measured);
    const rule = scaleOf(across).along(deciding?.at ?? 1);
    expect(barIn(draw(0.038, measured))).toBeLessThan(rule);
    expect(barIn(draw(0.035, measured))).toBeGreaterThan(scaleOf(across).along(1));
  });

  it("draws no wire of an unknown size, and says so", () => {
    expect(barIn(draw(null, measured))).toBeNull();
    expect(draw(null, measured)).toContain("Wire: size unknown");
  });

  it("hatches an unknown inside shut, from wall to wall, with the word", () => {
    const markup = draw(0.035, blank);
    expect(markup).toContain(">unknown</span>");
    expect(markup).toContain("Hub unknown");
    // Each hatched half reaches the middle line: no way is left open.
    const hatched = [...markup.matchAll(/<polygon class="[^"]*unknown[^"]*"[^>]* points="([^"]+)"/g)];
    expect(hatched.length).toBeGreaterThan(0);
    for (const [, points = ""] of hatched) expect(points).toMatch(/,84( |$)/);
  });

  it("lets one figure stand for the whole path where only the label speaks", () => {
    expect(draw(0.035, takes(0.038))).toContain("Whole path 0.038 in (0.965 mm) by label");
  });

  it("draws across to one scale: twice as wide is drawn twice as wide", () => {
    const { across } = scaleOf(inch(0.16));
    expect(across(inch(0.08))).toBeCloseTo(2 * across(inch(0.04)), 1);
    expect(scaleOf(inch(0.16)).along(1)).toBeLessThan(SIDE);
  });

  it("draws both extremes of a tolerance", () => {
    const loose = bores(bore("hub", 0.079), bore("shaft", 0.075), bore("end hole", 0.036, 0.002));
    const markup = draw(0.035, loose);
    expect(markup).toContain("End hole 0.036 in (0.914 mm) ± 0.051 mm");
    expect(markup).toMatch(/<polygon class="[^"]*maybe/);
    expect(draw(0.035, measured)).not.toMatch(/<polygon class="[^"]*maybe/);
  });
});
