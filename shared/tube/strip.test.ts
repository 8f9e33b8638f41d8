import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { onDay, whenUnknown } from "#shared/day/when.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import { marksOf } from "./strip.ts";

const line = (eventId: string, kind: EventKind, on: string | null) => ({
  eventId,
  kind,
  when: on === null ? whenUnknown : onDay(day(on)),
  time: null,
  recordedOn: day("2026-11-06"),
  amended: false,
});

const catheter = { since: onDay(day("2026-08-14")), eventId: "e2", recordedOn: day("2026-08-14") };

describe("what a dwell strip marks", () => {
  it("is what happened to the tube since its clock began, not the beginning itself", () => {
    const story = [
      line("e1", "placed", "2026-05-29"),
      line("e2", "exchanged", "2026-08-14"),
      line("e3", "checked", "2026-08-14"),
      line("e4", "capped", "2026-09-03"),
    ];
    expect(marksOf({ catheter, story })).toEqual([
      { on: "2026-08-14", kind: "checked" },
      { on: "2026-09-03", kind: "capped" },
    ]);
  });

  it("is nothing that was only written at a desk, and nothing without a day", () => {
    const story = [
      line("e3", "called", "2026-08-15"),
      line("e4", "plan recorded", "2026-08-16"),
      line("e5", "checked", null),
      line("e6", "partly dislodged", "2026-09-01"),
    ];
    expect(marksOf({ catheter, story })).toEqual([{ on: "2026-09-01", kind: "partly dislodged" }]);
  });

  it("of an undated clock is everything that has a day", () => {
    const undated = { ...catheter, since: whenUnknown };
    expect(marksOf({ catheter: undated, story: [line("e1", "checked", "2020-01-01")] })).toHaveLength(1);
  });
});
