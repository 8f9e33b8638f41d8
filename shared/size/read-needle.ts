import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import { type Gauge, gaugeOutside, gauges } from "#shared/size/gauge.ts";
import { inRange } from "#shared/size/in-range.ts";
import type { Length } from "#shared/size/length.ts";
import { type SizeRange, sizeRanges } from "#shared/size/size-ranges.ts";
import { typedSize } from "#shared/size/typed-size.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";

/** A needle's outside, as a gauge of the regular-wall table or as measured. Neither says what the needle takes. */
export type NeedleOutside =
  | { readonly told: "gauge"; readonly gauge: Gauge; readonly outside: Fact<Length> }
  | { readonly told: "length"; readonly outside: Fact<Length> };

const range: SizeRange = sizeRanges["needle outside"];

/** Reads "21 G", "~ 0.8 mm", "0.032 in" or "?". A bare number always asks: 21 is a gauge, 0.8 is not. */
export function readNeedle(entry: string): Parsed<NeedleOutside> {
  const typed = typedSize(entry);
  if (!typed.ok) return typed;
  const size = typed.value;
  if (size.certainty === "unknown") return parsed({ told: "length", outside: unknownFact });
  const { certainty, digits, unit } = size;
  const text = entry.trim();
  if (size.negative) return unread("length-not-positive", { text });
  if (unit === undefined) return unread("length-needs-unit", { text });
  if (unit === "G") {
    const gauge = gauges.find((listed) => String(listed) === digits);
    return gauge === undefined
      ? unread("gauge-not-listed", { text, gauges: gauges.join(", ") })
      : parsed({ told: "gauge", gauge, outside: { certainty, value: gaugeOutside[gauge] } });
  }
  if (!range.units.includes(unit)) {
    return unread("length-unit-unfit", { text, what: range.what, like: range.like });
  }
  const length = inRange({ digits, unit }, range);
  return length.ok ? parsed({ told: "length", outside: { certainty, value: length.value } }) : length;
}
