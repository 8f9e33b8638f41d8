import { describe, expect, it } from "vitest";
import { zone } from "#shared/day/instant.ts";
import { at } from "#tests/factories/reading.ts";
import { dayParts, type Stretch } from "./day-parts.ts";

const utc = zone("UTC");
const day = (cuts: readonly string[], more: Partial<Stretch> = {}) =>
  dayParts(
    {
      first: at("2026-11-14T10:00Z"),
      last: at("2026-11-14T20:00Z"),
      opens: null,
      closes: null,
      cuts: cuts.map((cut) => at(`2026-11-14T${cut}Z`)),
      ...more,
    },
    utc,
  ).map(({ segment, from, to, whole }) => {
    const clock = (instant: number) => new Date(instant).toISOString().slice(8, 16);
    return `${segment}: ${clock(from)} to ${clock(to)}${whole ? ", whole" : ""}`;
  });

describe("the parts of a day", () => {
  const cutTwice = ["0: 14T00:00 to 14T08:00", "1: 14T08:00 to 14T16:00", "2: 14T16:00 to 15T00:00"];

  it.each([
    [["08:00", "16:00"], cutTwice],
    [["16:00", "08:00"], cutTwice],
    [[], ["0: 14T00:00 to 15T00:00, whole"]],
    [["00:00"], ["1: 14T00:00 to 15T00:00, whole"]],
  ])("cut at %j, in whatever order the changes are told", (cuts, parts) => {
    expect(day(cuts)).toEqual(parts);
  });

  it("two changes at one time cut once, and both begin what follows", () => {
    expect(day(["08:00", "08:00"])).toEqual(["0: 14T00:00 to 14T08:00", "2: 14T08:00 to 15T00:00"]);
  });

  it("nothing is asked of the hours before the tube was in and after it was out; the rest of the day is not whole", () => {
    const lain = { opens: at("2026-11-14T06:00Z"), closes: at("2026-11-14T18:00Z") };
    expect(day([], lain)).toEqual(["0: 14T06:00 to 14T18:00"]);
    expect(day(["04:00", "18:00"], lain)).toEqual(["1: 14T06:00 to 14T18:00"]);
    expect(day([], { opens: at("2026-11-14T18:00Z"), closes: at("2026-11-14T18:00Z") })).toEqual([]);
  });
});
