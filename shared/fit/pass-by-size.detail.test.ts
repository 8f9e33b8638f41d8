import { describe, expect, it } from "vitest";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import { wireOf } from "#shared/fit/passage.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { bore, bores, estimated, inch, reported, rows } from "#tests/factories/tube-inside.ts";

const wire35 = confirmed(inch(0.035));

describe("what stands beside the verdict", () => {
  it("a bore: by how much too thick, tolerance and clearance as used", () => {
    const inside = bores(bore("end hole", 0.035, null));
    expect(passageBySize({ goes: wireOf(confirmed(inch(0.039))), inside, rows })).toEqual({
      verdict: "does not pass",
      outside: inch(0.039),
      decides: {
        basis: "bore",
        place: "end hole",
        certainty: "confirmed",
        says: "does not pass",
        inside: inch(0.035),
        tolerance: inch(0.002),
        toleranceFrom: "row",
        clearance: inch(0.001),
        outsideTolerance: inch(0),
        outsideToleranceFrom: "row",
        limits: { least: inch(0.032), most: inch(0.036) },
        gap: { is: "too thick", by: inch(0.004) },
      },
      compared: [expect.objectContaining({ place: "end hole" })],
    });
  });

  it("a recorded tolerance goes before the row's, and nought is one", () => {
    const inside = bores(bore("end hole", 0.04, 0));
    expect(passageBySize({ goes: wireOf(wire35), inside, rows })).toMatchObject({
      decides: { tolerance: 0, toleranceFrom: "recorded", gap: { is: "room", by: inch(0.005) } },
    });
  });

  it("doubt gives every reason", () => {
    const inside = bores(bore("end hole", estimated(inch(0.036)), 0.001));
    const wire = reported(inch(0.035));
    expect(passageBySize({ goes: wireOf(wire), inside, rows })).toMatchObject({
      verdict: "doubt",
      reasons: [
        { because: "tolerance" },
        { because: "certainty", of: "outside", certainty: "reported" },
        { because: "certainty", of: "bore", certainty: "estimated" },
      ],
    });
  });

  it("compares from the hub to the tip, the label last, in whatever order they were recorded", () => {
    const list = [bore("end hole", 0.05), bore("stopcock", 0.06), bore("shaft", 0.07), bore("hub", 0.08)];
    const inside = { takes: confirmed(inch(0.038)), bores: list, endHole: confirmed("closed" as const) };
    const { compared } = passageBySize({ goes: wireOf(wire35), inside, rows });
    expect(compared.map((each) => (each.basis === "bore" ? each.place : each.basis))).toEqual([
      "stopcock",
      "hub",
      "shaft",
      "end hole",
      "closed end hole",
      "label",
    ]);
    const turned = { ...inside, bores: list.toReversed() };
    expect(passageBySize({ goes: wireOf(wire35), inside: turned, rows })).toEqual(
      passageBySize({ goes: wireOf(wire35), inside, rows }),
    );
  });

  it("a tolerance wider than the bore leaves no opening below nothing", () => {
    const inside = bores(bore("end hole", 0.02, 0.03));
    expect(passageBySize({ goes: wireOf(wire35), inside, rows })).toMatchObject({
      verdict: "doubt",
      decides: { limits: { least: 0, most: inch(0.049) } },
    });
  });
});
