import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import type { OutputAsks } from "#shared/review/output-asks.ts";
import { queuePlaceOf } from "#shared/review/queue-part.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { at } from "#tests/factories/reading.ts";

const moment = { now: at("2026-11-06T12:00Z"), today: day("2026-11-06") };
const step = (kind: StepKind, dueOn: string, asked?: "asked") => ({
  kind,
  dueOn: day(dueOn),
  wasAsked: asked !== undefined,
});

const nothing: OutputAsks = { metUntil: null, plateauSince: null };
const met: OutputAsks = { ...nothing, metUntil: moment.now };
const wasMet: OutputAsks = { ...nothing, metUntil: at("2026-11-06T11:59Z") };
const plateau: OutputAsks = { ...nothing, plateauSince: day("2026-11-03") };

const partOf = (of: ReturnType<typeof step>, asks: OutputAsks) =>
  queuePlaceOf({ step: of, asks }, moment)?.part ?? null;

describe("where a tube stands in the physician's queue", () => {
  it.each([
    ["an alarm", step("alarm", "2026-11-20"), nothing, "alarm"],
    ["an alarm of a tube whose numeric part is met", step("alarm", "2026-11-06"), met, "alarm"],
    ["a met numeric part before its review is due", step("review", "2026-11-20"), met, "numeric part met"],
    ["one that is over since a minute", step("review", "2026-11-20"), wasMet, null],
    ["a review due today", step("review", "2026-11-06"), nothing, "review due"],
    ["a review due yesterday", step("review", "2026-11-05"), wasMet, "review due"],
    ["a review due tomorrow", step("review", "2026-11-07"), nothing, null],
    ["one that was asked for, due tomorrow", step("review", "2026-11-07", "asked"), nothing, "asked for"],
    ["one that was asked for, due today", step("review", "2026-11-06", "asked"), nothing, "review due"],
    [
      "a met numeric part of a tube without a date, and so without a review",
      step("assess the date", "2026-11-06"),
      met,
      "numeric part met",
    ],
    ["a tube without a date waits for nobody's review", step("no row", "2026-11-06"), nothing, null],
    ["a plateau before its review is due", step("review", "2026-11-20"), plateau, "plateau"],
    ["a plateau with a review that is due", step("review", "2026-11-01"), plateau, "plateau"],
    ["a plateau of a tube without a date", step("assess the date", "2026-11-06"), plateau, "plateau"],
    ["an alarm beside a plateau", step("alarm", "2026-11-06"), plateau, "alarm"],
    [
      "a met numeric part behind a plateau",
      step("review", "2026-11-20"),
      { ...met, ...{ plateauSince: day("2026-11-03") } },
      "numeric part met",
    ],
  ] as const)("%s", (_name, of, asks, part) => {
    expect(partOf(of, asks)).toBe(part);
  });

  it("a plateau waits since the day with which it came up, everything else since its due day", () => {
    const since = (of: ReturnType<typeof step>, asks: OutputAsks) =>
      queuePlaceOf({ step: of, asks }, moment)?.since;
    expect(since(step("review", "2026-11-20"), plateau)).toBe("2026-11-03");
    expect(since(step("review", "2026-11-20"), met)).toBe("2026-11-20");
    expect(since(step("review", "2026-11-05"), nothing)).toBe("2026-11-05");
  });
});
