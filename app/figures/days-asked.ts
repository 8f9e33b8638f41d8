/** Spans that the page offers, in days up to today. */
const spans = [30, 90, 365] as const;
type Span = (typeof spans)[number];

/** The span that an address asks for; 90 days where it asks for none that is offered. */
export const daysAsked = (
  text: string | undefined,
): { readonly days: Span; readonly spans: typeof spans } => ({
  days: spans.find((span) => String(span) === text) ?? 90,
  spans,
});
