import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { placed } from "#tests/support/factories.ts";
import { stepAfter } from "#tests/support/steps.ts";
import { sumsOf } from "./sums.ts";

const exchange = stepAfter([placed()], "exchange");

describe("the sums behind a step", () => {
  it("add the row's days to the day that the clock began", () => {
    expect(sumsOf(exchange)).toEqual([
      { end: "earliest", words: "Fri 14 Aug 2026 + 63 days = Fri 16 Oct 2026" },
      { end: "target", words: "Fri 14 Aug 2026 + 77 days = Fri 30 Oct 2026" },
      { end: "latest", words: "Fri 14 Aug 2026 + 90 days = Thu 12 Nov 2026" },
    ]);
  });

  it("leave out an end that is not the row's, such as the day of a plan", () => {
    const planned: OpenStep = { ...exchange, target: day("2026-11-02") };
    expect(sumsOf(planned).map(({ end }) => end)).toEqual(["earliest", "latest"]);
  });

  it("stand for an end that the calendar moved away from its sum", () => {
    const args = { end: "target", from: "2026-10-30", to: "2026-10-29", because: "closure", reason: "audit" };
    const moved: OpenStep = {
      ...exchange,
      target: day("2026-10-29"),
      why: [...exchange.why, { code: "moved", args, eventId: null }],
    };
    expect(sumsOf(moved)).toContainEqual({
      end: "target",
      words: "Fri 14 Aug 2026 + 77 days = Fri 30 Oct 2026",
    });
  });

  it("are none where no row counts", () => {
    expect(sumsOf({ ...exchange, why: [] })).toEqual([]);
  });
});
