import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";
import { reported } from "#tests/factories/tube-inside.ts";
import { type WireLengthQuestion, wireLength } from "./wire-length.ts";

const cm = (figure: number): Length => lengthOf(figure, "cm");
const row = (from: number, to: number, gripCm: number): WireLengthQuestion["row"] => ({
  beyondTipCm: { from, to },
  gripCm,
  source: "CP",
});

const question = (wire: number, asked: Partial<WireLengthQuestion> = {}): WireLengthQuestion => ({
  wire: confirmed(cm(wire)),
  fullLength: confirmed(cm(25)),
  externalLength: confirmed(cm(5)),
  devices: [confirmed(cm(25)), confirmed(cm(40))],
  row: row(0, 0, 5),
  ...asked,
});

describe("a wire that keeps access while the longest device goes over it", () => {
  it("textbook: 20 in, drains 25 and 40 long, grip 5 -> 65 cm", () => {
    expect(wireLength(question(65))).toMatchObject({
      verdict: "long enough",
      by: 0,
      sum: { inside: cm(20), device: cm(40), grip: cm(5), needed: { from: cm(65), to: cm(65) } },
    });
    expect(wireLength(question(64))).toMatchObject({ verdict: "too short", by: cm(1) });
  });

  it("textbook: a catheter of 100 cm, fully in, asks for twice its length", () => {
    const whole = { fullLength: confirmed(cm(100)), externalLength: confirmed(cm(0)), row: row(0, 0, 0) };
    const over = { ...whole, devices: [confirmed(cm(100))] };
    expect(wireLength(question(200, over)).verdict).toBe("long enough");
    expect(wireLength(question(199, over)).verdict).toBe("too short");
  });

  // The example's row: 10 to 20 cm beyond the tip, 10 to hold: 20 + 10 + 40 + 10 = 80, with 20 beyond 90.
  it.each([
    [90, "long enough"],
    [89.999, "doubt"],
    [80, "doubt"],
    [79.999, "too short"],
  ])("%d cm against 80 to 90: %s", (wire, verdict) => {
    expect(wireLength(question(wire, { row: row(10, 20, 10) })).verdict).toBe(verdict);
  });

  it("one unit under a limit is under it", () => {
    const wire = (units: number): Fact<Length> => confirmed((cm(65) + units) as Length);
    const at = [-1, 0, 1].map((units) => wireLength(question(0, { wire: wire(units) })).verdict);
    expect(at).toEqual(["too short", "long enough", "long enough"]);
  });

  it.each<[Partial<WireLengthQuestion>, string]>([
    [{ wire: unknownFact }, "length of the wire"],
    [{ fullLength: unknownFact }, "full length of the tube in place"],
    [{ externalLength: unknownFact }, "external length of the tube in place"],
    [{ devices: [confirmed(cm(25)), unknownFact] }, "length of what goes over the wire"],
    [{ devices: [] }, "length of what goes over the wire"],
    [{ row: null }, "row"],
  ])("names what is missing: %j", (asked, missing) => {
    expect(wireLength(question(300, asked))).toEqual({ verdict: "cannot tell", missing: [missing] });
  });

  it("asks when more is outside than there is", () => {
    const asked = { fullLength: confirmed(cm(25)), externalLength: confirmed(cm(26)) };
    expect(wireLength(question(300, asked))).toEqual({
      verdict: "external longer than full",
      external: cm(26),
      full: cm(25),
    });
  });

  it("a tube that is all outside has nothing inside: 0 + 40 + 5", () => {
    const asked = { externalLength: confirmed(cm(25)) };
    expect(wireLength(question(45, asked))).toMatchObject({
      verdict: "long enough",
      by: 0,
      sum: { inside: 0 },
    });
  });

  it("is doubt at best and at worst with a length that nobody here has measured", () => {
    for (const wire of [30, 300])
      expect(wireLength(question(wire, { externalLength: reported(cm(5)) }))).toMatchObject({
        verdict: "doubt",
        certainty: "reported",
      });
  });

  it("law: a longer wire never fails where a shorter is enough", () => {
    const rank = ["too short", "doubt", "long enough"];
    const length = fc.integer({ min: 0, max: 300 });
    fc.assert(
      fc.property(length, length, fc.integer({ min: 0, max: 20 }), (wire, more, beyond) => {
        const asked = { row: row(beyond, beyond + 5, 10) };
        const [shorter, longer] = [question(wire, asked), question(wire + more, asked)].map((each) =>
          rank.indexOf(wireLength(each).verdict),
        );
        expect(longer).toBeGreaterThanOrEqual(shorter ?? 0);
      }),
    );
  });
});
