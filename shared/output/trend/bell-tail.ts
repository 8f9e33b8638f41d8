const coefficients = [0.31938153, -0.356563782, 1.781477937, -1.821255978, 1.330274429] as const;

/**
 * The part of a standard bell curve beyond z, for z of 0 or more: the polynomial of Abramowitz and Stegun 1964, 26.2.17, whose
 * error is under 7.5e-8.
 */
export function bellTail(z: number): number {
  const t = 1 / (1 + 0.2316419 * z);
  const series = coefficients.reduceRight((sum, coefficient) => (sum + coefficient) * t, 0);
  return (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series;
}
