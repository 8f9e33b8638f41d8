import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import { exactLength, lengthOf } from "#shared/size/exact-length.ts";
import type { Length, LengthUnit } from "#shared/size/length.ts";
import type { SizeRange } from "#shared/size/size-ranges.ts";

/** Finer than 5 decimals falls between two units of Length. */
const MOST_DECIMALS = 5;
const TOO_FINE = /\.\d{5}\d*[1-9]/;

/** A plain positive decimal in a unit, as a length that is believed of this thing; refused with the limits otherwise. */
export function inRange(
  figure: { digits: string; unit: LengthUnit },
  range: Pick<SizeRange, "from" | "to" | "unit">,
): Parsed<Length> {
  const text = `${figure.digits} ${figure.unit}`;
  if (TOO_FINE.test(figure.digits)) return unread("length-too-fine", { text, decimals: MOST_DECIMALS });
  const length = exactLength(figure.digits, figure.unit);
  if (length === 0 && range.from > 0) return unread("length-not-positive", { text });
  return length === undefined ||
    length < lengthOf(range.from, range.unit) ||
    length > lengthOf(range.to, range.unit)
    ? unread("length-absurd", { text, limit: `${range.from} to ${range.to} ${range.unit}` })
    : parsed(length);
}
