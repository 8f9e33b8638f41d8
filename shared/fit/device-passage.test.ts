import { describe, expect, it } from "vitest";
import type { TubeInside } from "#shared/fit/inside.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import type { Goes, PassageRows } from "#shared/fit/passage.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";
import { F, mm, exampleRows as rows } from "#tests/factories/coaxial.ts";
import { blank, estimated, inch } from "#tests/factories/tube-inside.ts";

const device = (outside: Fact<Length>, tolerance: Length | null = null): Goes => ({
  as: "device",
  outside,
  tolerance,
});
const sheath = (inside: number, tolerance: number | null = null): TubeInside => ({
  ...blank,
  endHole: confirmed("open"),
  bores: [
    {
      place: "end hole",
      inside: confirmed(mm(inside)),
      tolerance: tolerance === null ? null : mm(tolerance),
    },
  ],
});
const labelled = (takesDevice: number): TubeInside => ({ ...blank, takesDevice: confirmed(F(takesDevice)) });

const verdict = (goes: Goes, inside: TubeInside, by: PassageRows = rows): string => {
  const answer = passageBySize({ goes, inside, rows: by });
  return answer.verdict === "cannot tell"
    ? `cannot tell: ${answer.missing.map(({ what }) => what).join(", ")}`
    : `${answer.verdict}: ${answer.decides.basis}`;
};

describe("a device through a device", () => {
  // Outer diameter rounded up to 0.1 mm, +-0.33 (ISO 20696:2018, 5.5.2); a sheath stated by its least inside (ISO 11070:2014, 7.2).
  it.each<[string, Goes, TubeInside, string]>([
    // 10 F is stated 3.4: 3.07 to 3.73. 3.3 mm less 0.05 and 0.0254 is 3.2246, with 0.05 more 3.3246.
    ["10 F in a sheath of 3.3 mm", device(confirmed(F(10))), sheath(3.3), "doubt: bore"],
    [
      "10 F in a sheath of 3.0 mm: 3.07 against 3.0246",
      device(confirmed(F(10))),
      sheath(3),
      "does not pass: bore",
    ],
    [
      "10 F in a sheath of 3.9 mm: 3.73 against 3.8246",
      device(confirmed(F(10))),
      sheath(3.9),
      "passes: bore",
    ],
    // 8 F is stated 2.7: at most 3.03.
    ["8 F in a sheath of 3.3 mm", device(confirmed(F(8))), sheath(3.3), "passes: bore"],
    // 12 F is 4.0: at least 3.67.
    ["12 F in a sheath of 3.3 mm", device(confirmed(F(12))), sheath(3.3), "does not pass: bore"],
    // 9 F is stated 3.0, not 3.1: at most 3.33, and 3.33 + 0.0254 + 0.05 = 3.4054.
    ["9 F at the limit", device(confirmed(F(9))), sheath(3.4054), "passes: bore"],
    ["9 F a hair under it", device(confirmed(F(9))), sheath(3.4053), "doubt: bore"],
    // A tolerance of its own stands about the size itself: 3.3333 + 0.1 = 3.4333.
    [
      "10 F measured to 0.1 mm, bore exact",
      device(confirmed(F(10)), mm(0.1)),
      sheath(3.4588, 0),
      "passes: bore",
    ],
    ["the same in 3.4587 mm", device(confirmed(F(10)), mm(0.1)), sheath(3.4587, 0), "doubt: bore"],
    [
      "10 F in a sheath labelled for 10 F: up to and including",
      device(confirmed(F(10))),
      labelled(10),
      "passes: label",
    ],
    [
      "10.2 F in a sheath labelled for 10 F",
      device(confirmed(F(10.2))),
      labelled(10),
      "does not pass: label",
    ],
    ["about 8 F in a sheath labelled for 10 F", device(estimated(F(8))), labelled(10), "doubt: label"],
    ["unknown size", device(unknownFact), labelled(10), "cannot tell: outside"],
    [
      "5 F where only a wire's label is known",
      device(confirmed(F(5))),
      { ...blank, takes: confirmed(inch(0.038)) },
      "cannot tell: takes or bores",
    ],
  ])("%s", (_name, goes, inside, expected) => {
    expect(verdict(goes, inside)).toBe(expected);
  });

  it("a wire goes where a device of that size does", () => {
    const wire: Goes = { as: "wire", outside: confirmed(inch(0.035)), tolerance: null };
    expect(verdict(wire, labelled(10))).toBe("passes: label");
    expect(verdict(wire, { ...labelled(10), takes: confirmed(inch(0.018)) })).toBe("does not pass: label");
  });

  it("without a row for its outside and none of its own, cannot tell", () => {
    const none = { ...rows, outsideTolerance: { wire: undefined, device: undefined } };
    expect(verdict(device(confirmed(F(8))), sheath(3.9), none)).toBe("cannot tell: outside tolerance row");
    expect(verdict(device(confirmed(F(8)), mm(0.1)), sheath(3.9), none)).toBe("passes: bore");
    expect(verdict(device(confirmed(F(8))), labelled(10), none)).toBe("passes: label");
  });
});
