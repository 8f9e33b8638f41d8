import { describe, expect, it } from "vitest";
import { calendarChanges, calendarEntries } from "#shared/day/calendar-change.ts";
import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import { day } from "#shared/day/day.ts";
import { calendarChangeWords, entryWords, holidaysWords, shutWords } from "#shared/words/calendar.ts";
import { proposedWords, touchedWords, waitingWords } from "#shared/words/proposed-days.ts";

const before: ClinicCalendar = {
  version: 1,
  openWeekdays: [1, 2, 3, 4, 5],
  closures: [{ from: day("2026-12-07"), to: day("2026-12-07"), reason: "staff day" }],
};
const after: ClinicCalendar = {
  version: 2,
  openWeekdays: [1, 3, 5],
  closures: [{ from: day("2026-12-21"), to: day("2027-01-01"), reason: "audit" }],
  halfDays: [
    { on: day("2026-12-18"), open: "morning", reason: "course" },
    { on: day("2026-12-23"), open: "afternoon", reason: "eve" },
    { on: day("2026-12-17"), open: "morning", reason: "rota" },
  ],
};

describe("the calendar in words", () => {
  it("says of each change what is there now and what is no longer", () => {
    expect(calendarChanges(before, after).map(calendarChangeWords)).toEqual([
      "Open Monday, Wednesday, Friday; before, Monday to Friday.",
      "No longer closed Mon 7 Dec 2026: staff day.",
      "Closed Mon 21 Dec 2026 to Fri 1 Jan 2027: audit.",
      "Half a day: Thu 17 Dec 2026 open until noon: rota.",
      "Half a day: Fri 18 Dec 2026 open until noon: course.",
      "Half a day: Wed 23 Dec 2026 open from noon on: eve.",
    ]);
    expect(calendarChanges(after, { ...after, halfDays: [] }).map(calendarChangeWords)).toContain(
      "No longer half a day: Wed 23 Dec 2026 open from noon on: eve.",
    );
  });

  it("tells each entry with its length; a half day on which the clinic is closed says so", () => {
    const { coming } = calendarEntries(after, day("2026-12-01"));
    const told = coming.map((entry) => Object.values(entryWords(entry, after)).join(" | "));
    expect(told).toEqual([
      "Thu 17 Dec 2026 | half a day | open until noon, but closed already on every Thursday | rota",
      "Fri 18 Dec 2026 | half a day | open until noon | course",
      "Mon 21 Dec 2026 to Fri 1 Jan 2027 | 12 days | closed | audit",
      "Wed 23 Dec 2026 | half a day | open from noon on, but closed already: audit | eve",
    ]);
    const [one] = calendarEntries(before, day("2026-12-01")).coming;
    expect(one && entryWords(one).long).toBe("1 day");
  });

  it("counts tubes, dates and holidays in the singular and the plural", () => {
    expect(touchedWords({ tubes: 0, pastLatest: 0 })).toBe("No date that stands would be another.");
    expect(touchedWords({ tubes: 1, pastLatest: 0 })).toBe(
      "1 tube gets a new date proposed; none would be past latest today.",
    );
    expect(touchedWords({ tubes: 12, pastLatest: 2 })).toBe(
      "12 tubes get a new date proposed; 2 would be past latest today.",
    );
    expect(proposedWords(0)).toBe("No date that stands would be another by it.");
    expect(proposedWords(1)).toMatch(/^New dates are proposed for 1 tube; the old ones stand/);
    expect(waitingWords(0)).toBe("");
    expect(waitingWords(1)).toMatch(/^1 date waits to be confirmed already/);
    expect(waitingWords(3)).toMatch(/^3 dates wait to be confirmed already/);
    expect([holidaysWords(1), holidaysWords(8)]).toEqual(["1 holiday", "8 holidays"]);
    expect(shutWords(null)).toBe("open");
  });
});
