import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Instant, instant } from "#shared/day/instant.ts";
import type { Span } from "./measured-interval.ts";
import { touching, touchingEach } from "./touching.ts";

const span = (from: number, to: number): Span => ({ from: instant(from), to: instant(to) });

const anySpans = fc
  .array(fc.tuple(fc.nat(40), fc.integer({ min: 1, max: 20 })), { maxLength: 12 })
  .map((pairs) => pairs.map(([from, length]) => span(from, from + length)).sort((a, b) => a.from - b.from));

/** Parts one after the other, some of them apart. */
const anyParts = fc
  .array(fc.tuple(fc.nat(5), fc.integer({ min: 1, max: 9 })), { maxLength: 8 })
  .map((steps) => {
    let at = 0;
    return steps.map(([gap, length]) => {
      const from = at + gap;
      at = from + length;
      return span(from, at);
    });
  });

describe("spans of parts", () => {
  it("are those that each part alone would find", () => {
    fc.assert(
      fc.property(anyParts, anySpans, (parts, spans) => {
        expect(touchingEach(parts, spans)).toEqual(parts.map((part) => spans.filter(touching(part))));
      }),
    );
  });

  it("hold one that began long before and ends within, behind a short one that has ended", () => {
    const long = span(0, 25);
    const short = span(1, 2);
    expect(touchingEach([span(0, 10), span(10, 20), span(20, 30)], [long, short])).toEqual([
      [long, short],
      [long],
      [long],
    ]);
  });

  it("touch no part at whose edge they end or begin", () => {
    const first = 10 as Instant;
    expect(touchingEach([span(first, 20)], [span(5, first), span(20, 30)])).toEqual([[]]);
  });
});
