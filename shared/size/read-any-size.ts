import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { Gauge } from "#shared/size/gauge.ts";
import { inRange } from "#shared/size/in-range.ts";
import type { Length, LengthUnit } from "#shared/size/length.ts";
import { readNeedle } from "#shared/size/read-needle.ts";
import { anySizeRanges } from "#shared/size/size-ranges.ts";
import { typedSize } from "#shared/size/typed-size.ts";

/** A size of nothing in particular, with the unit in which it was told; of a needle its gauge, with the outside that is listed for it. */
export type AnySize = {
  readonly length: Length;
  readonly isAbout: boolean;
  readonly told:
    | { readonly by: "unit"; readonly unit: LengthUnit }
    | { readonly by: "gauge"; readonly gauge: Gauge };
};

/**
 * Reads "8 F", ".035 in", "2,7 mm", "25 cm" or "21 G", with "~" before what is about so. A bare number asks for its unit, "1,500" for what
 * it means; zero, negatives and what no such unit measures are refused with the limits.
 */
export function readAnySize(entry: string): Parsed<AnySize> {
  const text = entry.trim();
  const typed = typedSize(text);
  if (!typed.ok) return typed;
  if (typed.value.certainty === "unknown") return unread("length-not-understood", { text });
  const { certainty, negative, digits, unit } = typed.value;
  const isAbout = certainty === "estimated";
  if (negative) return unread("length-not-positive", { text });
  if (unit === undefined) return unread("length-needs-unit", { text });
  if (unit === "G") {
    const needle = readNeedle(text);
    if (!needle.ok) return needle;
    const { value } = needle;
    return value.told === "gauge" && value.outside.certainty !== "unknown"
      ? parsed({ length: value.outside.value, isAbout, told: { by: "gauge", gauge: value.gauge } })
      : unread("length-not-understood", { text });
  }
  const length = inRange({ digits, unit }, anySizeRanges[unit]);
  return length.ok ? parsed({ length: length.value, isAbout, told: { by: "unit", unit } }) : length;
}
