import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { queuePartOf } from "#shared/review/queue-part.ts";
import type { WhyCode } from "#shared/step/step.ts";

const today = day("2026-11-06");
const step = (kind: "alarm" | "review", dueOn: string, ...codes: readonly WhyCode[]) => ({
  kind,
  dueOn: day(dueOn),
  why: codes.map((code) => ({ code, args: {}, eventId: null })),
});

describe("where a tube stands in the physician's queue", () => {
  it.each([
    ["an alarm", step("alarm", "2026-11-20"), null, "alarm"],
    [
      "an alarm of a tube whose numeric part is met",
      step("alarm", "2026-11-06"),
      "numeric part met",
      "alarm",
    ],
    [
      "a met numeric part before its review is due",
      step("review", "2026-11-20"),
      "numeric part met",
      "numeric part met",
    ],
    ["a review due today", step("review", "2026-11-06"), "cannot tell", "review due"],
    ["a review due yesterday", step("review", "2026-11-05"), "not met", "review due"],
    ["a review due tomorrow", step("review", "2026-11-07"), "not met", null],
    [
      "one that was asked for, due tomorrow",
      step("review", "2026-11-07", "row", "review-asked"),
      null,
      "asked for",
    ],
    ["one that was asked for, due today", step("review", "2026-11-06", "review-asked"), null, "review due"],
    ["what cannot be told is no reason to look sooner", step("review", "2026-11-07"), "cannot tell", null],
  ] as const)("%s", (_name, of, criterion, part) => {
    expect(queuePartOf(of, criterion, today)).toBe(part);
  });
});
