import { lengthOf } from "#shared/size/exact-length.ts";

/** Scientific Reports 2025, s41598-024-71935-w. */
export const MEASURED_DRAINS_SOURCE = "Scientific Reports 2025, s41598-024-71935-w";

const measured = (french: number, boreMm: number, flowMlPerMin: number) => ({
  outside: lengthOf(french, "F"),
  meanBore: lengthOf(boreMm, "mm"),
  flowMlPerMin,
});

/**
 * Drains of eight makers on a bench: the mean bore and the flow of water by size. Measured figures, shown as what they are: no flow is
 * ever computed from a bore, since from 10 F to 12 F its fourth power says x1.39 where the bench found x1.04.
 */
export const measuredDrains = [
  measured(6, 1.49, 128),
  measured(8, 1.9, 207),
  measured(10, 2.43, 291),
  measured(12, 2.64, 303),
] as const;
