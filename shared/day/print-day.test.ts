import { describe, expect, it } from "vitest";
import { day } from "./day.ts";
import { instant, zone } from "./instant.ts";
import { printDay, printDistance, printInstant, printWhen } from "./print-day.ts";
import { notAfter, onDay, type When, whenUnknown } from "./when.ts";
import { whenSchema } from "./when-schema.ts";

const from = (precision: "month" | "year" | "span", earliest: string, latest: string): When => ({
  precision,
  earliest: day(earliest),
  latest: day(latest),
});

describe("a date in words", () => {
  it.each([
    [onDay(day("2026-11-06")), "Fri 6 Nov 2026"],
    [onDay(day("2028-01-01")), "Sat 1 Jan 2028"],
    [from("month", "2026-03-01", "2026-03-31"), "March 2026"],
    [from("month", "2026-11-01", "2026-11-06"), "November 2026"],
    [from("year", "2025-01-01", "2025-12-31"), "2025"],
    [from("span", "2026-11-14", "2026-11-20"), "14 to 20 Nov 2026"],
    [from("span", "2026-10-28", "2026-11-03"), "28 Oct to 3 Nov 2026"],
    [from("span", "2026-12-28", "2027-01-03"), "28 Dec 2026 to 3 Jan 2027"],
    [whenUnknown, "unknown date"],
  ])("%j is %s", (when, words) => {
    expect(printWhen(when)).toBe(words);
  });

  it("an instant is told by the clock of its zone", () => {
    const at = instant(Date.parse("2026-11-07T04:05:00Z"));
    expect(printInstant(at, zone("America/New_York"))).toBe("Fri 6 Nov 2026, 23:05");
    expect(printInstant(at, zone("Pacific/Kiritimati"))).toBe("Sat 7 Nov 2026, 18:05");
  });

  it.each([
    ["2026-11-06", "today"],
    ["2026-11-07", "tomorrow"],
    ["2026-11-05", "yesterday"],
    ["2026-11-09", "in 3 days"],
    ["2026-10-26", "11 days ago"],
  ])("%s is %s", (of, words) => {
    expect(printDistance(day(of), day("2026-11-06"))).toBe(words);
  });
});

describe("a date's past part", () => {
  const march = from("month", "2026-03-01", "2026-03-31");

  it.each([
    ["2026-02-28", null],
    ["2026-03-01", "2026-03-01"],
    ["2026-03-30", "2026-03-30"],
    ["2026-04-01", "2026-03-31"],
  ])("on %s March 2026 ends on %s", (today, latest) => {
    expect(notAfter(march, day(today))?.latest ?? null).toBe(latest);
  });

  it("of the unknown is unknown", () => {
    expect(notAfter(whenUnknown, day("2026-03-01"))).toBe(whenUnknown);
  });
});

describe("the schema of a date", () => {
  it.each([
    [onDay(day("2026-11-06")), true],
    [whenUnknown, true],
    [{ precision: "month", earliest: "2026-03-01", latest: "2026-03-31" }, true],
    [{ precision: "month", earliest: "2026-03-31", latest: "2026-03-01" }, false],
    [{ precision: "day", earliest: "2026-03-01", latest: "2026-03-02" }, false],
    [{ precision: "unknown", earliest: "2026-03-01", latest: "2026-03-01" }, false],
    [{ precision: "day", earliest: null, latest: null }, false],
    [{ precision: "day", earliest: "2026-02-30", latest: "2026-02-30" }, false],
  ])("%j: %s", (value, valid) => {
    expect(whenSchema.safeParse(value).success).toBe(valid);
  });
});

it("names come from own tables", () => {
  expect(printDay(day("2026-09-30"))).toBe("Wed 30 Sep 2026");
});
