import { type Length, UNITS_PER_MM } from "#shared/size/length.ts";

const TENTH_MM = UNITS_PER_MM / 10;
/** ISO 20696:2018, 5.5.2: outer diameter +-0.33 mm. */
export const OUTER_TOLERANCE = ((UNITS_PER_MM / 100) * 33) as Length;

/** What a package states of an outer diameter, and what the tube in it may measure. */
export type StatedOuter = { readonly stated: Length; readonly least: Length; readonly most: Length };

/** An outer diameter as a package states it: rounded up to 0.1 mm (ISO 20696:2018, 5.5.2). */
export const statedAs = (outside: Length): Length => (Math.ceil(outside / TENTH_MM) * TENTH_MM) as Length;

/** Outer diameter rounded up to 0.1 mm, with its tolerance (ISO 20696:2018, 5.5.2): 8 F is 2.7 mm, 2.37 to 3.03; 9 F is 3.0. */
export function statedOuter(outside: Length): StatedOuter {
  const stated = statedAs(outside);
  return {
    stated,
    least: Math.max(0, stated - OUTER_TOLERANCE) as Length,
    most: (stated + OUTER_TOLERANCE) as Length,
  };
}

/** A sheath's minimum inside, rounded down to 0.1 mm (ISO 11070:2014, 7.2). */
export const statedSheathInside = (leastInside: Length): Length =>
  (Math.floor(leastInside / TENTH_MM) * TENTH_MM) as Length;
