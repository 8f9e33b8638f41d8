import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { instant, zone } from "#shared/day/instant.ts";
import { clocksOf, ourTime, reachOf, theirTime, thereAt } from "./reach.ts";

/**
 * Two clocks. By the IANA time zone database, from memory: Denver is eight hours behind Berlin, but seven while only Denver has summer time
 * (8 to 28 March 2026); Kathmandu is 5 h 45 min ahead of UTC all year; Kiritimati 14 h.
 */
const [berlin, denver] = [zone("Europe/Berlin"), zone("America/Denver")];
const clocks = clocksOf(berlin, { livesIn: denver });

describe("the patient's own clock", () => {
  it("is told by the clinic's, and the other way round", () => {
    expect(theirTime(day("2026-08-17"), "18:00", clocks)).toBe("10:00");
    expect(ourTime(day("2026-08-17"), "10:00", clocks)).toBe("18:00");
    expect(theirTime(day("2026-03-16"), "18:00", clocks)).toBe("11:00");
    expect(theirTime(day("2026-08-17"), "03:00", clocks)).toBe("19:00");
  });

  it("is the clinic's where nobody said another", () => {
    const same = clocksOf(berlin, reachOf({ telephones: [] }));
    expect(theirTime(day("2026-08-17"), "18:00", same)).toBe("18:00");
    expect(thereAt(instant(Date.UTC(2026, 7, 17)), same)).toBeNull();
  });

  it("a time that a clock skips stands as it is", () => {
    // Berlin's clocks go from 02:00 to 03:00 on 29 March 2026.
    expect(theirTime(day("2026-03-29"), "02:30", clocks)).toBe("02:30");
  });

  it.each([
    ["America/Denver", "10:00", -480],
    ["Asia/Kathmandu", "21:45", 225],
    ["Pacific/Kiritimati", "06:00", 720],
  ])("%s shows %s when it is 18:00 in Berlin in summer", (name, time, aheadMinutes) => {
    const at = instant(Date.UTC(2026, 7, 17, 16));
    const there = thereAt(at, { clinic: berlin, patient: zone(name) });
    expect(there).toEqual({ zone: name, time, aheadMinutes });
  });
});
