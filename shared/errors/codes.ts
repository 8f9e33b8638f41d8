/**
 * Every refusal there is: a closed list. A code is its sentence in short; shared/words/refusals.ts must hold a
 * sentence for each, or the build fails.
 */
export const refusalCodes = [
  // days
  "day-not-understood",
  "day-order-unclear",
  "day-in-future",
  "day-does-not-exist",
  "day-missing",
  "time-not-understood",
  "time-does-not-exist",
  "closure-ends-before-start",
  "choice-repeated",
  // sizes
  "length-not-understood",
  "length-needs-unit",
  "length-absurd",
  "length-not-positive",
  // text
  "text-missing",
  "text-too-long",
  "choice-unknown",
] as const;

export type RefusalCode = (typeof refusalCodes)[number];
