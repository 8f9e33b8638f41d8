import type { Microlitres } from "#shared/output/microlitre.ts";

declare const unit: unique symbol;

/** Millilitres in 24 hours. */
export type MlPer24h = number & { readonly [unit]: "mL/24 h" };

export const HOUR_MS = 3_600_000;

/** 62 mL in 31 hours are 48 mL/24 h. The time is in milliseconds and more than zero. */
export function ratePer24h(volume: Microlitres, overMs: number): MlPer24h {
  if (!(overMs > 0)) throw new RangeError(`no rate over ${overMs} ms`);
  return ((volume * 24 * HOUR_MS) / overMs / 1000) as MlPer24h;
}
