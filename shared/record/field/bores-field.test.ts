import { describe, expect, it } from "vitest";
import { boresField } from "./bores-field.ts";

const bores = boresField({ label: "Insides" });
/** 1 mm is 1,500,000 units, 1 in 38,100,000. */
const MM = 1_500_000;

describe("measured insides as one line", () => {
  it("reads place by place, with tolerances", () => {
    expect(bores.read("hub 2.0 mm, shaft 1.9 mm +-0.05 mm, end hole .038 in")).toEqual({
      ok: true,
      value: [
        { place: "hub", inside: { certainty: "confirmed", value: 2 * MM }, tolerance: null },
        { place: "shaft", inside: { certainty: "confirmed", value: 1.9 * MM }, tolerance: 0.05 * MM },
        { place: "end hole", inside: { certainty: "confirmed", value: 1_447_800 }, tolerance: null },
      ],
    });
  });

  it("takes a decimal comma, a short word and an unknown inside", () => {
    expect(bores.read("Tip 0,9 mm; valve ?")).toEqual({
      ok: true,
      value: [
        { place: "end hole", inside: { certainty: "confirmed", value: 0.9 * MM }, tolerance: null },
        { place: "valve", inside: { certainty: "unknown" }, tolerance: null },
      ],
    });
  });

  it("echoes both units", () => {
    const read = bores.read("hub 2 mm, end hole ~.038 in");
    expect(read.ok && bores.echo?.(read.value)).toBe(
      "hub 2 mm (0.079 in), end hole about 0.965 mm (0.038 in)",
    );
    expect(bores.read(" ")).toEqual({ ok: true, value: undefined });
  });

  it.each([
    ["2.0 mm", "bores-not-understood"],
    ["hub", "bores-not-understood"],
    ["elbow 2 mm", "word-unknown"],
    ["hub 2.0", "length-needs-unit"],
    ["hub 6 F", "length-unit-unfit"],
    ["shaft 90 mm", "length-absurd"],
    ["hub 2 mm, hub 3 mm", "choice-repeated"],
    ["hub 2 mm +-0.05", "length-needs-unit"],
  ])("%j is refused: %s", (text, code) => {
    expect(bores.read(text)).toMatchObject({ ok: false, refusal: { code } });
  });
});
