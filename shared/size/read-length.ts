import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import { inRange } from "#shared/size/in-range.ts";
import type { Length, LengthUnit } from "#shared/size/length.ts";
import { type SizedThing, type SizeRange, sizeRanges } from "#shared/size/size-ranges.ts";
import { typedSize } from "#shared/size/typed-size.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";

/**
 * Which thing's size is read, and what a bare number means. A field that names its unit beside the box passes that unit;
 * everywhere else a bare number is asked again. A needle's outside has a reader of its own, since it may come as a gauge.
 */
export type LengthField = {
  readonly thing: Exclude<SizedThing, "needle outside">;
  readonly bare: "refuse" | LengthUnit;
};

/**
 * Reads a typed size: `readLength("8.5Fr", {thing: "tube outside", bare: "refuse"})` is a confirmed 8.5 F. "~8 F" is estimated,
 * "?" unknown. Refuses text that is no size, a missing unit, a unit that does not tell this size (French for an inside),
 * zero, negatives, and what is outside the range of the thing.
 */
export function readLength(entry: string, field: LengthField): Parsed<Fact<Length>> {
  const typed = typedSize(entry);
  if (!typed.ok) return typed;
  const size = typed.value;
  if (size.certainty === "unknown") return parsed(unknownFact);
  const text = entry.trim();
  if (size.negative) return unread("length-not-positive", { text });
  const unit = size.unit ?? field.bare;
  if (unit === "refuse") return unread("length-needs-unit", { text });
  const range: SizeRange = sizeRanges[field.thing];
  if (unit === "G" || !range.units.includes(unit)) {
    return unread("length-unit-unfit", { text, what: range.what, like: range.like });
  }
  const length = inRange({ digits: size.digits, unit }, range);
  return length.ok ? parsed({ certainty: size.certainty, value: length.value }) : length;
}
