import type { Span } from "#shared/output/measured-interval.ts";

export const touching =
  (part: Span) =>
  (span: Span): boolean =>
    span.from < part.to && span.to > part.from;

/**
 * Of each part the spans that touch it, in their order. Parts follow one another, spans are in order of their start and may overlap.
 * One walk through both: a log of years has as many days as readings.
 */
export function touchingEach<S extends Span>(
  parts: readonly Span[],
  spans: readonly S[],
): readonly (readonly S[])[] {
  let ended = 0;
  let begun = 0;
  /** Where all spans before it have ended by the part's start. */
  let furthest = Number.NEGATIVE_INFINITY;
  return parts.map((part) => {
    while (begun < spans.length && (spans[begun]?.from ?? 0) < part.to) begun += 1;
    for (let next = spans[ended]; next !== undefined && ended < begun; next = spans[ended]) {
      furthest = Math.max(furthest, next.to);
      if (furthest > part.from) break;
      ended += 1;
    }
    return spans.slice(ended, begun).filter(touching(part));
  });
}
