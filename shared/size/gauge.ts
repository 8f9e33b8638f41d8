import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";

/** Regular-wall needle gauges that a size is kept for. */
export const gauges = [18, 19, 20, 21, 22] as const;
export type Gauge = (typeof gauges)[number];

/**
 * Outside of a regular-wall needle (needle gauge comparison chart). Its inside is left out on purpose: walls differ, so what
 * a needle takes is a recorded fact, never read from its gauge.
 */
export const gaugeOutside = {
  18: lengthOf(0.05, "in"),
  19: lengthOf(0.042, "in"),
  20: lengthOf(0.03575, "in"),
  21: lengthOf(0.03225, "in"),
  22: lengthOf(0.02825, "in"),
} as const satisfies Record<Gauge, Length>;
