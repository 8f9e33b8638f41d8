import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { onDay, type When, whenUnknown } from "#shared/day/when.ts";
import type { Clock } from "#shared/tube/state.ts";
import { catheterWords, immatureWords, tractWords } from "./clocks.ts";

const march: When = { precision: "month", earliest: day("2026-03-01"), latest: day("2026-03-31") };
const clock = (since: When): Clock => ({ since, eventId: "e1", recordedOn: day("2026-08-14") });
const aged = (days: number, exact = true) => ({ known: true, days, exact }) as const;

describe("the catheter's age", () => {
  it.each([
    [aged(84), onDay(day("2026-08-14")), "84 days, since Fri 14 Aug 2026"],
    [aged(1), onDay(day("2026-08-14")), "1 day, since Fri 14 Aug 2026"],
    [aged(112, false), march, "up to 112 days, since March 2026"],
    [{ known: false } as const, whenUnknown, "cannot tell: nobody knows since when it is in"],
  ])("%j of %j", (age, since, words) => {
    expect(catheterWords(age, clock(since))).toBe(words);
  });
});

describe("the tract's age", () => {
  it.each([
    [aged(84), onDay(day("2026-08-14")), "84 days, punctured Fri 14 Aug 2026"],
    [aged(82, false), march, "at least 82 days, punctured March 2026"],
    [
      aged(30, false),
      whenUnknown,
      "at least 30 days, as the first tube known in it; the puncture is undated",
    ],
    [{ known: false } as const, whenUnknown, "cannot tell: neither the puncture nor the tube is dated"],
  ])("%j of %j", (age, since, words) => {
    expect(tractWords(age, clock(since))).toBe(words);
  });

  it.each([
    [13, "Immature: the row's limit is 14 days. If access is lost now, it becomes a new puncture."],
    [14, "Past the row's limit for an immature tract, 14 days."],
  ])("%i days against a row of 14", (days, words) => {
    expect(immatureWords(aged(days), 14)).toBe(words);
  });

  it("says nothing without a row, and cannot tell without an age", () => {
    expect(immatureWords(aged(3), null)).toBeNull();
    expect(immatureWords({ known: false }, 14)).toBe(
      "Cannot tell whether the tract is mature: the row's limit is 14 days.",
    );
  });
});
