import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type PlacedLabel, placeLabels, tallAxis } from "#app/strip/tall-layout.ts";
import { addDays, day } from "#shared/day/day.ts";

const today = day("2026-11-06");
const inDays = (days: number) => addDays(today, days);

describe("the axis of one tube", () => {
  it("reaches from a week before the clock began to a week after the last day", () => {
    expect(tallAxis(today, inDays(-84), inDays(40))).toEqual({ before: 91, after: 47 });
  });

  it.each([
    ["of an undated tube without a window", null, null, { before: 60, after: 45 }],
    ["of a tube placed today", inDays(0), inDays(90), { before: 60, after: 97 }],
    ["of a tube long past its window", inDays(-200), inDays(-110), { before: 207, after: 63 }],
    ["of a tube of many years", inDays(-3000), inDays(5), { before: 400, after: 120 }],
  ])("%s", (_, began, last, axis) => {
    expect(tallAxis(today, began, last)).toEqual(axis);
  });
});

/** As wide as the layout takes letters and the drawing to be: 900 pixels, 6.6 a letter. */
const left = ({ at }: PlacedLabel): number => at * 9;
const right = (label: PlacedLabel): number => left(label) + label.text.length * 6.6;

describe("names over a strip", () => {
  it("that do not meet share the lowest lane", () => {
    const placed = placeLabels([
      { at: 10, text: "placed" },
      { at: 40, text: "checked" },
    ]);
    expect(placed.map(({ lane }) => lane)).toEqual([0, 0]);
  });

  it("that would meet stand higher the further left they begin", () => {
    const placed = placeLabels([
      { at: 10, text: "placed, Fri 14 Aug 2026" },
      { at: 12, text: "checked, Mon 17 Aug 2026" },
      { at: 14, text: "capped, Wed 19 Aug 2026" },
    ]);
    expect(placed.map(({ text, lane }) => [text.split(",")[0], lane])).toEqual([
      ["placed", 2],
      ["checked", 1],
      ["capped", 0],
    ]);
  });

  it("never lie over one another, nor under the leader of one above them", () => {
    const label = fc.record({ at: fc.integer({ min: 0, max: 100 }), text: fc.string({ maxLength: 30 }) });
    fc.assert(
      fc.property(fc.array(label, { maxLength: 12 }), (labels) => {
        const placed = placeLabels(labels);
        for (const a of placed)
          for (const b of placed) {
            if (a === b || a.lane > b.lane || left(b) < left(a)) continue;
            // Of one place, they stand over one another and share their leader.
            if (left(a) === left(b) && a.lane < b.lane) continue;
            // b begins at or right of a, in its lane or higher: a must end before the leader or the name of b.
            expect(right(a)).toBeLessThanOrEqual(left(b));
          }
      }),
    );
  });
});
