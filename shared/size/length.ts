declare const unit: unique symbol;

/**
 * An exact length: a whole number of 1/1500 micrometre, the largest unit in which 0.00001 in (381 units),
 * 0.1 F (50,000 units) and 0.001 mm (1,500 units) are all whole.
 */
export type Length = number & { readonly [unit]: "1/1500 um" };

export const UNITS_PER_MM = 1_500_000;
export const UNITS_PER_INCH = 38_100_000;
/** 1 F = 1/3 mm of outer diameter (ISO 20696:2018, 5.5.2 note). */
export const UNITS_PER_FRENCH = 500_000;

export const lengthUnits = ["F", "in", "mm", "cm"] as const;
export type LengthUnit = (typeof lengthUnits)[number];

export const unitsPer = {
  F: UNITS_PER_FRENCH,
  in: UNITS_PER_INCH,
  mm: UNITS_PER_MM,
  cm: 10 * UNITS_PER_MM,
} as const satisfies Record<LengthUnit, number>;
