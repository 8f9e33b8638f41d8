import { describe, expect, it } from "vitest";
import { zone } from "#shared/day/instant.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { fold } from "#shared/tube/fold.ts";
import { ran, wholeDays } from "#tests/factories/alarm-input.ts";
import { at } from "#tests/factories/reading.ts";
import * as make from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { flushIsOrdered, outputOfTube, placedAt } from "./output-of-tube.ts";
import { segmentChanges } from "./segment-cuts.ts";

const utc = zone("UTC");
const tubeOf = (...entries: readonly make.Entry[]) => fold(history(...entries)).tubes[0]!;
const outputOf = (...entries: readonly make.Entry[]) =>
  outputOfTube(tubeOf(...entries), {
    readings: wholeDays([40, 30]),
    zone: utc,
    row: { flushDoesNotComeBackMl: -10 },
    now: at("2026-11-05T12:00Z"),
  });

describe("whether a flush is ordered", () => {
  it.each([
    ["by its order", confirmed("10 mL twice a day"), "nephrostomy", true],
    ["not, by its order", confirmed("None"), "nephrostomy", false],
    ["by the example of its kind, where nothing is known of an order", unknownFact, "nephrostomy", true],
    ["not, where its kind has no example", unknownFact, "tunnelled pleural catheter", false],
    [
      "by its order, where its kind has no example",
      confirmed("10 mL once a day"),
      "tunnelled pleural catheter",
      true,
    ],
  ] as const)("%s", (_name, flushOrder, kind, expected) => {
    expect(flushIsOrdered({ ...tubeOf(make.placed({ kind })), flushOrder })).toBe(expected);
  });
});

describe("the days of a tube", () => {
  it("go on to today while it is in, and end with the day of its end", () => {
    const placed = make.placed({ on: "2026-10-20" });
    expect(outputOf(placed).days.at(-1)?.day).toBe("2026-11-05");
    expect(outputOf(placed, make.removed({ on: "2026-11-03" })).days.at(-1)?.day).toBe("2026-11-03");
  });

  it("begin with a placement whose clock time is known", () => {
    expect(placedAt(tubeOf(make.placed({ on: "2026-10-30", at: "10:00" })), utc)).toBe(
      at("2026-10-30T10:00Z"),
    );
    expect(placedAt(tubeOf(make.placed({ on: "2026-10-30" })), utc)).toBeNull();
  });
});

describe("what ends a segment", () => {
  it("stands in the order of time, and only with a date", () => {
    const { story } = tubeOf(
      make.placed({ on: "2026-10-20" }),
      make.upsized({ on: "2026-11-02", at: "10:00", size: make.F(12) }),
      make.capped({ on: "2026-11-02" }),
      make.repositioned({ on: "?", recordedOn: "2026-11-04" }),
    );
    // Without a clock time the cap counts from the first hour of its day.
    expect(segmentChanges(story, utc)).toEqual([
      { at: at("2026-11-02T00:00Z"), kind: "capped" },
      { at: at("2026-11-02T10:00Z"), kind: "upsized" },
    ]);
  });
});

it("a day says what is to be said of any of its readings", () => {
  const readings = [
    ran("2026-11-02T00:00", "2026-11-02T12:00", 10, { measuredBy: "estimate" }),
    ran("2026-11-02T12:00", "2026-11-03T00:00", 10, {
      gross: { ...ran("2026-11-02T00:00", "2026-11-02T12:00", 10).gross, certainty: "reported" } as never,
    }),
  ];
  const { days } = outputOfTube(tubeOf(make.placed({ on: "2026-10-20" })), {
    readings,
    zone: utc,
    row: { flushDoesNotComeBackMl: -10 },
    now: at("2026-11-05T12:00Z"),
  });
  expect(days.find(({ day }) => day === "2026-11-02")?.remarks).toEqual(["estimated", "reported"]);
});
