import { type Length, type LengthUnit, unitsPer } from "#shared/size/length.ts";

/**
 * How many decimals each unit is written with. A length that is whole in `exact` decimals is printed exactly, so that an entry
 * reads back as it was typed; any other is rounded to `rounded`. At least `least` stand: the trade writes 0.050 in.
 */
const decimals = {
  F: { least: 0, exact: 2, rounded: 2 },
  in: { least: 3, exact: 5, rounded: 3 },
  mm: { least: 0, exact: 3, rounded: 2 },
  cm: { least: 0, exact: 2, rounded: 2 },
} as const satisfies Record<LengthUnit, { least: number; exact: number; rounded: number }>;

/** Under a millimetre the third decimal matters: wires differ by 0.076 mm. */
const roundedTo = (length: Length, unit: LengthUnit): number =>
  unit === "mm" && length < unitsPer.mm ? 3 : decimals[unit].rounded;

/** Half up, in whole numbers throughout. */
function inDecimals(length: Length, unit: LengthUnit, places: number): bigint {
  const per = BigInt(unitsPer[unit]);
  return (2n * BigInt(length) * 10n ** BigInt(places) + per) / (2n * per);
}

const isWhole = (length: Length, unit: LengthUnit, places: number): boolean =>
  (BigInt(length) * 10n ** BigInt(places)) % BigInt(unitsPer[unit]) === 0n;

function decimalText(scaled: bigint, places: number, least: number): string {
  const digits = String(scaled).padStart(places + 1, "0");
  const whole = digits.slice(0, digits.length - places);
  const fraction = digits
    .slice(digits.length - places)
    .replace(/0+$/, "")
    .padEnd(least, "0");
  return fraction === "" ? whole : `${whole}.${fraction}`;
}

/**
 * A length with its unit: "8 F", "0.035 in", "2.67 mm", "25 cm". What is too small for the last decimal is written as
 * "under 0.001 in", so that a difference never reads as none.
 */
export function printLength(length: Length, unit: LengthUnit): string {
  const { least, exact } = decimals[unit];
  const places = isWhole(length, unit, exact) ? exact : roundedTo(length, unit);
  const scaled = inDecimals(length, unit, places);
  if (scaled === 0n && length > 0) return `under ${decimalText(1n, places, least)} ${unit}`;
  return `${decimalText(scaled, places, least)} ${unit}`;
}

/** "8 F (2.67 mm)": the trade's unit first, the other beside it. */
export const printBoth = (length: Length, first: LengthUnit, second: LengthUnit): string =>
  `${printLength(length, first)} (${printLength(length, second)})`;
