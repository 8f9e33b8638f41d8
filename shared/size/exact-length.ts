import { type Length, type LengthUnit, unitsPer } from "#shared/size/length.ts";

const DECIMAL = /^(\d*)\.?(\d*)$/;

/**
 * Decimal text ("0.035", ".035", "8") in a unit, as an exact length: digits are counted, nothing is rounded. Undefined
 * when the text is no plain decimal, falls between two units (finer than 5 decimals) or is too large to count.
 */
export function exactLength(decimal: string, unit: LengthUnit): Length | undefined {
  const [, whole = "", fraction = ""] = DECIMAL.exec(decimal) ?? [];
  if (whole + fraction === "") return undefined;
  const scale = 10n ** BigInt(fraction.length);
  const scaled = BigInt(whole + fraction) * BigInt(unitsPer[unit]);
  const units = Number(scaled / scale);
  return scaled % scale === 0n && Number.isSafeInteger(units) ? (units as Length) : undefined;
}

/**
 * A length from a figure written in code or in a row of data: `lengthOf(0.035, "in")`. The shortest decimal of the number is
 * what counts, so no float error enters. Throws RangeError on a figure that is no whole number of units.
 */
export function lengthOf(figure: number, unit: LengthUnit): Length {
  const length = exactLength(String(figure), unit);
  if (length === undefined) throw new RangeError(`not a whole length: ${figure} ${unit}`);
  return length;
}

/** The figure in a unit, as a float: for drawing and statistics only, never to compare or to store. */
export const figureIn = (length: Length, unit: LengthUnit): number => length / unitsPer[unit];
