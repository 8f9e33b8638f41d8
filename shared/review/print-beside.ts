import { type Analyte, unitsOf } from "#shared/review/analyte.ts";
import { type Concentration, inOwnUnit } from "#shared/review/concentration.ts";
import type { Ratio } from "#shared/review/fluid-ratio.ts";

const TENTH = 10;

/** A figure that rounding has carried onto the published one says on which side of it it lies. */
function notOnto(published: string, shown: string, apart: number): string {
  if (shown !== published || apart === 0) return shown;
  return `just ${apart < 0 ? "under" : "over"} ${published}`;
}

/** "85.52 umol/L", rounded to what is read in that unit. */
export function printConcentration(level: Concentration, analyte: Analyte): string {
  const { own, decimals } = unitsOf(analyte);
  return `${Math.round(inOwnUnit(level) * 10 ** decimals) / 10 ** decimals} ${own}`;
}

/** The same beside a published level. */
export const printLevelBeside = (level: Concentration, beside: Concentration, analyte: Analyte): string =>
  notOnto(printConcentration(beside, analyte), printConcentration(level, analyte), level - beside);

/** Rounded to a tenth, from ten on to a whole. */
function rounded({ over, under }: Ratio): number {
  const ratio = over / under;
  return ratio < TENTH ? Math.round(ratio * TENTH) / TENTH : Math.round(ratio);
}

/** "3.4", "42": a ratio beside a published number of times; 2.99 beside 3 is "just under 3". */
export function printTimes(ratio: Ratio, beside: number): string {
  const shown = rounded(ratio);
  if (shown === 0 && ratio.over > 0) return "under 0.1";
  return notOnto(String(beside), String(shown), ratio.over - beside * ratio.under);
}
