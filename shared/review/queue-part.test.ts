import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import type { Criterion, CriterionKind } from "#shared/output/criterion/criterion.ts";
import { queuePartOf } from "#shared/review/queue-part.ts";
import type { WhyCode } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { criterionWhen, daily, drain, low, noon, well } from "#tests/factories/criterion.ts";

const today = day("2026-11-06");
const step = (kind: StepKind, dueOn: string, ...codes: readonly WhyCode[]) => ({
  kind,
  dueOn: day(dueOn),
  why: codes.map((code) => ({ code, args: {}, eventId: null })),
});
const verdict = (kind: CriterionKind): Criterion => ({ ...criterionWhen({ readings: low }), kind });
const sixty = criterionWhen({
  entries: [drain(), well],
  readings: daily("2026-11-15", [60, 60, 60, 60, 60, 60]),
});

const partOf = (of: ReturnType<typeof step>, criterion: Criterion | null, seen: readonly string[] = []) =>
  queuePartOf(
    {
      step: of,
      criterion,
      lastReview: { evidence: { asOf: noon, readings: [...seen], said: ["not met"], protocol: 1 } },
    },
    today,
  );

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
      "not met",
      "asked for",
    ],
    [
      "one that was asked for, due today",
      step("review", "2026-11-06", "review-asked"),
      "not met",
      "review due",
    ],
    ["what cannot be told is no reason to look sooner", step("review", "2026-11-07"), "cannot tell", null],
    [
      "a met numeric part of a tube without a date, and so without a review",
      step("assess the date", "2026-11-06"),
      "numeric part met",
      "numeric part met",
    ],
    ["a tube without a date waits for nobody's review", step("no row", "2026-11-06"), "not met", null],
  ] as const)("%s", (_name, of, kind, part) => {
    expect(partOf(of, kind === null ? null : verdict(kind))).toBe(part);
  });

  it("a plateau stands before a review that is due, and before its day", () => {
    expect(partOf(step("review", "2026-11-20"), sixty)).toBe("plateau");
    expect(partOf(step("review", "2026-11-01"), sixty)).toBe("plateau");
    expect(partOf(step("assess the date", "2026-11-06"), sixty)).toBe("plateau");
    expect(partOf(step("alarm", "2026-11-06"), sixty)).toBe("alarm");
  });

  it("a plateau that a review rested on waits for the day that this review set", () => {
    // The row was met with the fifth day, Sat 14 Nov: a review of that evening saw its reading, one of the day before did not.
    const until13 = ["10", "11", "12", "13"].map((date) => `tube-1 2026-11-${date}`);
    const later = step("review", "2026-11-20");
    expect(partOf(later, sixty, until13)).toBe("plateau");
    expect(partOf(later, sixty, [...until13, "tube-1 2026-11-14"])).toBeNull();
    expect(partOf(step("review", "2026-11-06"), sixty, [...until13, "tube-1 2026-11-14"])).toBe("review due");
    expect(
      queuePartOf({ step: later, criterion: sixty, lastReview: { evidence: null } }, today),
      "a decision that kept nothing of what was seen",
    ).toBe("plateau");
    expect(queuePartOf({ step: later, criterion: sixty, lastReview: null }, today)).toBe("plateau");
  });
});
