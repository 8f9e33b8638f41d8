import { describe, expect, it } from "vitest";
import { askCalendar } from "#server/calendar/change-calendar.ts";
import { proposeHolidays, publicHolidays } from "#server/calendar/holidays.ts";
import { viewCalendar } from "#server/calendar/view-calendar.ts";
import { newId } from "#server/ids.ts";
import { day } from "#shared/day/day.ts";
import { people, testDatabase } from "#tests/support/database.ts";

const daysOf = async (country: string, region: string, year: number): Promise<readonly string[]> =>
  (await publicHolidays({ country, region, year })).map(({ on }) => on);

describe("public holidays that the library proposes", () => {
  // 5 U.S.C. 6103(a) and (b): legal public holidays; one on a Saturday is kept on the Friday before, by Executive Order 11582 one on a
  // Sunday on the Monday after. The dates are arithmetic from those rules.
  it.each([
    ["Independence Day, a Saturday", 2026, "2026-07-03"],
    ["Juneteenth, a Saturday", 2027, "2027-06-18"],
    ["Independence Day, a Sunday", 2027, "2027-07-05"],
    ["Christmas Day, a Saturday", 2027, "2027-12-24"],
    ["New Year's Day 2028, a Saturday", 2027, "2027-12-31"],
  ])("federal days off as observed in the United States: %s of %i", async (_name, year, on) => {
    expect(await daysOf("US", "", year)).toContain(on);
  });

  // The bank-holiday file of the government of the United Kingdom (gov.uk/bank-holidays.json), division england-and-wales.
  const bankHolidays: Readonly<Record<number, readonly string[]>> = {
    2026: [
      "2026-01-01",
      "2026-04-03",
      "2026-04-06",
      "2026-05-04",
      "2026-05-25",
      "2026-08-31",
      "2026-12-25",
      "2026-12-28",
    ],
    2027: [
      "2027-01-01",
      "2027-03-26",
      "2027-03-29",
      "2027-05-03",
      "2027-05-31",
      "2027-08-30",
      "2027-12-27",
      "2027-12-28",
    ],
  };
  // Known difference: the library also names the weekend days whose substitutes the file lists.
  const weekendDays = ["2026-12-26", "2027-12-25", "2027-12-26"];

  it.each(["ENG", "WLS"])("bank holidays of 2026 and 2027 in England and Wales: %s", async (region) => {
    for (const year of [2026, 2027]) {
      const weekdays = (await daysOf("GB", region, year)).filter((on) => !weekendDays.includes(on));
      expect(weekdays).toEqual(bankHolidays[year]);
    }
  });

  it("known difference: the once-only bank holiday of Scotland on 15 June 2026 is not among them, and the clinic adds it itself", async () => {
    // The bank-holiday file, division scotland, lists 2026-06-15; the library of this version does not.
    expect(await daysOf("GB", "SCT", 2026)).not.toContain("2026-06-15");
    using db = testDatabase();
    const asked = {
      kind: "holidays",
      days: [{ on: day("2027-06-14"), name: "Bank holiday, once only" }],
    } as const;
    askCalendar({ db, staff: people.lead }, { actId: newId(), seen: 1, asked });
    expect(viewCalendar(db).calendar.closures).toEqual([
      { from: "2027-06-14", to: "2027-06-14", reason: "Bank holiday, once only" },
    ]);
  });

  it("a holiday of several days is proposed day by day", async () => {
    // Law 2429 of Turkey on national and general holidays, from memory: the feasts last three and a half and four and a half days.
    const days = await daysOf("TR", "", 2026);
    expect(days).toEqual(expect.arrayContaining(["2026-03-20", "2026-03-21", "2026-03-22"]));
    expect(days).toEqual(expect.arrayContaining(["2026-05-27", "2026-05-28", "2026-05-29", "2026-05-30"]));
    expect(days).not.toContain("2026-03-23");
    expect(days).not.toContain("2026-05-31");
  });

  it("are the same whatever the server's zone", async () => {
    const before = process.env.TZ;
    const offsets = new Set<number>();
    const found = new Set<string>();
    try {
      for (const zone of ["UTC", "Pacific/Kiritimati", "America/Los_Angeles", "America/Santiago"]) {
        process.env.TZ = zone;
        offsets.add(new Date(Date.UTC(2026, 6, 1)).getTimezoneOffset());
        const all = await Promise.all(["US", "GB", "CL", "TR", "KI"].map((of) => daysOf(of, "", 2026)));
        found.add(JSON.stringify(all));
      }
    } finally {
      if (before === undefined) delete process.env.TZ;
      else process.env.TZ = before;
    }
    expect(offsets.size).toBe(4);
    expect(found.size).toBe(1);
  });
});

describe("holidays beside the calendar", () => {
  it("say which stand, which lie on a closed weekday, and how many are past", async () => {
    using db = testDatabase();
    const { today } = viewCalendar(db);
    const year = Number(today.slice(0, 4)) + 1;
    const asked = { country: "GB", region: "ENG", year };
    const stands = { kind: "holidays", days: [{ on: day(`${year}-12-25`), name: "Christmas" }] } as const;
    askCalendar({ db, staff: people.lead }, { actId: newId(), seen: 1, asked: stands });
    const { holidays, regions, countries, country, past, version } = await proposeHolidays(db, asked);
    expect([country, version, past]).toEqual(["GB", 2, 0]);
    expect(countries.length).toBeGreaterThan(150);
    expect(regions.map(({ value }) => value)).toEqual(expect.arrayContaining(["ENG", "SCT", "WLS", "NIR"]));
    expect(holidays.find(({ on }) => on === `${year}-12-25`)?.stands).toEqual({
      code: "closure",
      reason: "Christmas",
    });
    const open = holidays.filter((holiday) => holiday.stands === null);
    expect(open.map(({ name }) => name)).toEqual(expect.arrayContaining(["Good Friday", "Easter Monday"]));
    const before = await proposeHolidays(db, { ...asked, year: Number(today.slice(0, 4)) - 1 });
    expect(before.holidays).toEqual([]);
    expect(before.past).toBeGreaterThan(7);
  });

  it("of a country that is not in the list are none, and a region of another country is left out", async () => {
    using db = testDatabase();
    expect(await proposeHolidays(db, { country: "XX", region: "", year: 2027 })).toMatchObject({
      country: null,
      holidays: [],
    });
    expect(await proposeHolidays(db, { country: "US", region: "ENG", year: 2027 })).toMatchObject({
      country: "US",
      region: "",
    });
  });
});
