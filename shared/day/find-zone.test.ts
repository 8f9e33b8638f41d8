import { describe, expect, it } from "vitest";
import { findZone } from "./find-zone.ts";

/** Names of the IANA time zone list. */
describe("a time zone", () => {
  it.each([
    ["Europe/London", "Europe/London"],
    ["europe/london", "Europe/London"],
    ["London", "Europe/London"],
    [" new york ", "America/New_York"],
    ["Kiritimati", "Pacific/Kiritimati"],
    ["UTC", "UTC"],
  ])("%s is %s", (text, zone) => expect(findZone(text)).toBe(zone));

  it.each(["", "Nowhere", "Europe", "GMT+25", "3"])("%s is none", (text) =>
    expect(findZone(text)).toBeNull(),
  );
});
