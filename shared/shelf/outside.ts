import { type Parsed, parsed } from "#shared/errors/refusal.ts";
import type { CoaxialSort } from "#shared/fit/coaxial.ts";
import { gaugeOutside, gauges } from "#shared/size/gauge.ts";
import type { Length, LengthUnit } from "#shared/size/length.ts";
import { printExactly } from "#shared/size/print-exactly.ts";
import { readLength } from "#shared/size/read-length.ts";
import { readNeedle } from "#shared/size/read-needle.ts";
import type { Fact } from "#shared/tube/certainty.ts";

/** The units in which the trade tells the outside of that sort, the usual one first. */
const unitsOf = {
  wire: ["in", "mm"],
  needle: ["mm", "in"],
  stiffener: ["mm", "in", "F"],
  dilator: ["F", "mm", "in"],
  tube: ["F", "mm", "in"],
  sheath: ["F", "mm", "in"],
  extension: ["F", "mm", "in"],
} as const satisfies Record<CoaxialSort, readonly [LengthUnit, ...LengthUnit[]]>;

/** An outside as that sort tells it: a wire in inches, a needle by its gauge too, a tube in French. A bare number asks. */
export function readOutside(text: string, sort: CoaxialSort): Parsed<Fact<Length>> {
  if (sort === "needle") {
    const needle = readNeedle(text);
    return needle.ok ? parsed(needle.value.outside) : needle;
  }
  return readLength(text, { thing: sort === "wire" ? "wire" : "tube outside", bare: "refuse" });
}

/** "0.035 in", "21 G", "8 F": in the trade's unit where nothing is rounded, else in the next; reads back as it was. */
export function printOutside(length: Length, sort: CoaxialSort): string {
  const gauge = sort === "needle" ? gauges.find((listed) => gaugeOutside[listed] === length) : undefined;
  return gauge === undefined ? printExactly(length, unitsOf[sort]) : `${gauge} G`;
}
