import { expect, it } from "vitest";
import type { RefusalCode } from "#shared/errors/codes.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { LengthUnit } from "#shared/size/length.ts";
import { readAnySize } from "#shared/size/read-any-size.ts";

it.each<[string, number, LengthUnit]>([
  ["8 F", 8, "F"],
  ["8.5Fr", 8.5, "F"],
  ["10.2 Ch", 10.2, "F"],
  [".035 in", 0.035, "in"],
  ['0.035"', 0.035, "in"],
  ["2,7 mm", 2.7, "mm"],
  ["25 cm", 25, "cm"],
  ["0.5 F", 0.5, "F"],
  ["40 F", 40, "F"],
  ["0.1 mm", 0.1, "mm"],
])("%s is read as typed", (text, figure, unit) => {
  expect(readAnySize(text)).toEqual({
    ok: true,
    value: { length: lengthOf(figure, unit), isAbout: false, told: { by: "unit", unit } },
  });
});

it("reads a gauge as the outside that is listed for it, and keeps that a size is about so", () => {
  // Needle gauge comparison chart, regular wall: 21 G is 0.03225 in outside.
  expect(readAnySize("~21 G")).toEqual({
    ok: true,
    value: { length: lengthOf(0.03225, "in"), isAbout: true, told: { by: "gauge", gauge: 21 } },
  });
});

it.each<[string, RefusalCode]>([
  ["8", "length-needs-unit"],
  ["2,7", "length-needs-unit"],
  ["1,500", "length-comma-unclear"],
  ["1,500 mm", "length-comma-unclear"],
  ["8 F 2 mm", "length-not-understood"],
  ["8 stone", "length-not-understood"],
  ["?", "length-not-understood"],
  ["-8 F", "length-not-positive"],
  ["0 mm", "length-not-positive"],
  ["80 F", "length-absurd"],
  ["0.49 F", "length-absurd"],
  ["40.1 F", "length-absurd"],
  ["501 cm", "length-absurd"],
  ["17 G", "gauge-not-listed"],
  ["0.0350001 in", "length-too-fine"],
  ["", "text-missing"],
])("%s asks: %s", (text, code) => {
  const read = readAnySize(text);
  expect(read.ok ? "read" : read.refusal.code).toBe(code);
});
