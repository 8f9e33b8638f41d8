import { type Microlitres, microlitres, millilitres } from "#shared/output/microlitre.ts";

const AMOUNT = /(\d+(?:\.\d+)?)(?:\s*[-–]\s*(\d+(?:\.\d+)?))?\s*ml\b/gi;

/** The most that an order lets in at a time: of "10-20 mL x 2-4 a day" 20 mL. An order without a figure, or "none", is 0. */
export function orderedFlush(order: string): Microlitres {
  const amounts = [...order.matchAll(AMOUNT)].map(([, low, high]) => millilitres(Number(high ?? low)));
  return microlitres(Math.max(0, ...amounts));
}
