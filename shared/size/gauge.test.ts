import { expect, it } from "vitest";
import { lengthOf } from "#shared/size/exact-length.ts";
import { type Gauge, gaugeOutside, gauges } from "#shared/size/gauge.ts";
import { readNeedle } from "#shared/size/read-needle.ts";

// Needle gauge comparison chart, regular wall.
it.each([
  [18, 0.05],
  [19, 0.042],
  [20, 0.03575],
  [21, 0.03225],
  [22, 0.02825],
] as const satisfies readonly (readonly [Gauge, number])[])("%s G is %s in outside", (gauge, inches) => {
  expect(gaugeOutside[gauge]).toBe(lengthOf(inches, "in"));
});

it("a higher gauge is a thinner needle", () => {
  const outsides = gauges.map((gauge) => gaugeOutside[gauge]);
  expect(outsides).toEqual([...outsides].sort((a, b) => b - a));
});

it.each(["21 G", "21G", "21 ga", "21-gauge", " 21 g "])("%j is a gauge, with its outside only", (text) => {
  expect(readNeedle(text)).toEqual({
    ok: true,
    value: {
      told: "gauge",
      gauge: 21,
      outside: { certainty: "confirmed", value: lengthOf(0.03225, "in") },
    },
  });
});

it("reads an estimated gauge, a measured outside and an unknown one", () => {
  expect(readNeedle("~19 G")).toMatchObject({ value: { gauge: 19, outside: { certainty: "estimated" } } });
  expect(readNeedle("0.8 mm")).toEqual({
    ok: true,
    value: { told: "length", outside: { certainty: "confirmed", value: lengthOf(0.8, "mm") } },
  });
  expect(readNeedle("?")).toEqual({ ok: true, value: { told: "length", outside: { certainty: "unknown" } } });
});

it.each([
  ["21", "length-needs-unit"],
  ["30 G", "gauge-not-listed"],
  ["21.5 G", "gauge-not-listed"],
  ["-21 G", "length-not-positive"],
  ["3 F", "length-unit-unfit"],
  ["8 mm", "length-absurd"],
  ["wide", "length-not-understood"],
])("%j is refused: %s", (text, code) => {
  expect(readNeedle(text)).toMatchObject({ ok: false, refusal: { code } });
});
