import type { Ratio } from "#shared/review/fluid-ratio.ts";

const TENTH = 10;

/** Rounded to a tenth, from ten on to a whole. */
function rounded({ over, under }: Ratio): number {
  const ratio = over / under;
  return ratio < TENTH ? Math.round(ratio * TENTH) / TENTH : Math.round(ratio);
}

/**
 * "3.4", "42": a ratio to be read beside a published number of times. Rounding never carries it onto that number or over it: 2.99 beside 3 is "just under 3".
 */
export function printTimes(ratio: Ratio, beside: number): string {
  const apart = ratio.over - beside * ratio.under;
  const shown = rounded(ratio);
  if (shown === beside && apart !== 0) return `just ${apart < 0 ? "under" : "over"} ${beside}`;
  return shown === 0 && ratio.over > 0 ? "under 0.1" : String(shown);
}
