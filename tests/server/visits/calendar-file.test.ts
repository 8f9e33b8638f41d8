import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CalendarVisit, calendarFile } from "#server/visits/calendar-file.ts";
import { day } from "#shared/day/day.ts";
import { type Instant, instant, instantAt, zone } from "#shared/day/instant.ts";
import { readCalendar } from "#tests/support/read-calendar.ts";

const LONDON = zone("Europe/London");

const at = (on: string, clock: string): Instant => {
  const read = instantAt(day(on), clock, LONDON);
  if (!read.ok) throw new Error("that time is there");
  return read.value;
};

const NOW = at("2026-10-20", "12:00");

const from = (on: string, clock: string, minutes: number | null = 50): CalendarVisit["when"] => ({
  kind: "from",
  start: at(on, clock),
  minutes,
});

const visit = (said: Partial<CalendarVisit> = {}): CalendarVisit => ({
  id: "7f1c2d3e-0000-4000-8000-000000000001",
  revision: 0,
  where: "Room 1",
  when: from("2026-11-12", "09:30"),
  acts: "exchange, 2 tubes",
  stands: "booked",
  changedAt: at("2026-10-19", "16:05"),
  ...said,
});

const linesOf = (file: string): readonly string[] => file.split("\r\n");
/** Folded lines put together again, by RFC 5545, 3.1. */
const unfolded = (file: string): readonly string[] => linesOf(file.replaceAll("\r\n ", ""));

describe("a calendar file, read back by another library", () => {
  it("says when, how long, where and what", () => {
    expect(readCalendar(calendarFile([visit()], NOW))).toEqual([
      {
        uid: "7f1c2d3e-0000-4000-8000-000000000001@dwellbook",
        sequence: 0,
        summary: "exchange, 2 tubes",
        location: "Room 1",
        start: "2026-11-12T09:30:00.000Z",
        startText: "2026-11-12T09:30:00Z",
        zone: "UTC",
        minutes: 50,
        status: "CONFIRMED",
        stamp: "2026-10-20T11:00:00Z",
        changed: "2026-10-19T15:05:00Z",
      },
    ]);
  });

  it("keeps the clinic's hour over a clock change (British summer time ends on 25 October 2026, 02:00)", () => {
    const before = visit({ id: "before", when: from("2026-10-23", "09:30") });
    const after = visit({ id: "after", when: from("2026-10-26", "09:30") });
    const over = visit({ id: "over", when: from("2026-10-25", "00:30", 120) });
    const read = readCalendar(calendarFile([before, after, over], NOW));
    expect(read.map(({ uid, start, minutes }) => [uid, start, minutes])).toEqual([
      ["before@dwellbook", "2026-10-23T08:30:00.000Z", 50],
      ["over@dwellbook", "2026-10-24T23:30:00.000Z", 120],
      ["after@dwellbook", "2026-10-26T09:30:00.000Z", 50],
    ]);
  });

  it("a move keeps the UID and raises the sequence", () => {
    const [stood] = readCalendar(calendarFile([visit()], NOW));
    const [moved] = readCalendar(
      calendarFile([visit({ revision: 3, when: from("2026-11-13", "14:00"), where: "Room 2" })], NOW),
    );
    expect(moved).toMatchObject({
      uid: stood?.uid,
      sequence: 3,
      start: "2026-11-13T14:00:00.000Z",
      location: "Room 2",
    });
  });

  it("a cancellation cancels: the same UID, a higher sequence, its status, and a word where a calendar hides that", () => {
    const [read] = readCalendar(calendarFile([visit({ revision: 1, stands: "cancelled" })], NOW));
    expect(read).toMatchObject({
      uid: "7f1c2d3e-0000-4000-8000-000000000001@dwellbook",
      sequence: 1,
      status: "CANCELLED",
      summary: "Cancelled: exchange, 2 tubes",
      start: "2026-11-12T09:30:00.000Z",
    });
  });

  it("one that nobody has agreed to is tentative, and says so where a calendar hides that (3.8.1.11)", () => {
    const [read] = readCalendar(calendarFile([visit({ stands: "proposed" })], NOW));
    expect(read).toMatchObject({ status: "TENTATIVE", summary: "Proposed: exchange, 2 tubes" });
  });

  it("one whose length is not known has a beginning and no end, one whose time is not known is of its day (3.6.1)", () => {
    const short = visit({ id: "short", when: from("2026-11-12", "09:30", null) });
    const long = visit({ id: "day", when: { kind: "day", on: day("2026-11-12") } });
    const file = calendarFile([short, long], NOW);
    expect(readCalendar(file)).toMatchObject([
      { uid: "day@dwellbook", minutes: 24 * 60 },
      { uid: "short@dwellbook", start: "2026-11-12T09:30:00.000Z", minutes: 0 },
    ]);
    expect(unfolded(file)).toContain("DTSTART;VALUE=DATE:20261112");
    expect(unfolded(file).filter((line) => line.startsWith("DTEND"))).toEqual([]);
  });

  it("the server's own zone changes no date and no moment", () => {
    const visits = [visit({ id: "a" }), visit({ id: "b", when: { kind: "day", on: day("2026-11-12") } })];
    const file = () => calendarFile([visits[0]!, visits[1]!], NOW);
    const stood = file();
    const before = process.env.TZ;
    try {
      for (const name of ["America/Los_Angeles", "Pacific/Kiritimati"]) {
        process.env.TZ = name;
        expect(file()).toBe(stood);
      }
    } finally {
      if (before === undefined) delete process.env.TZ;
      else process.env.TZ = before;
    }
  });

  it("one event a visit, in order of time and then of id, whatever order they come in", () => {
    const visits = ["b", "c", "a"].map((id, n) =>
      visit({ id, when: from("2026-11-12", n === 1 ? "08:00" : "10:00") }),
    );
    const [first, ...rest] = visits;
    const file = calendarFile([first!, ...rest], NOW);
    expect(readCalendar(file).map(({ uid }) => uid)).toEqual(["c@dwellbook", "a@dwellbook", "b@dwellbook"]);
    expect(calendarFile([visits[2]!, visits[1]!, visits[0]!], NOW)).toBe(file);
  });

  it("is refused an id that could end its line", () => {
    for (const id of ["a\r\nATTENDEE:x", "", "a b", "a;b"])
      expect(() => calendarFile([visit({ id })], NOW), id).toThrow(RangeError);
  });
});

describe("a calendar file by the letter of RFC 5545", () => {
  const names = (file: string) => unfolded(file).map((line) => line.split(/[:;]/)[0]);

  it("has the properties that it must have, and no other: nothing speaks of the patient (3.6, 3.6.1)", () => {
    expect(names(calendarFile([visit()], NOW))).toEqual([
      "BEGIN",
      "VERSION",
      "PRODID",
      "METHOD",
      "BEGIN",
      "UID",
      "SEQUENCE",
      "DTSTAMP",
      "DTSTART",
      "DTEND",
      "SUMMARY",
      "LOCATION",
      "STATUS",
      "LAST-MODIFIED",
      "END",
      "END",
      "",
    ]);
  });

  it("is published, in UTC, form 2 of a date-time (3.3.5)", () => {
    const lines = unfolded(calendarFile([visit()], NOW));
    expect(lines).toEqual(
      expect.arrayContaining([
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//Dwellbook//Booked visits//EN",
        "METHOD:PUBLISH",
        "DTSTART:20261112T093000Z",
        "DTEND:20261112T102000Z",
        "DTSTAMP:20261020T110000Z",
      ]),
    );
  });

  it("escapes backslash, semicolon, comma and line ends of a text, and no colon (3.3.11)", () => {
    const where = 'Ward 3; bed "2", C:\\left\nsecond floor';
    const file = calendarFile([visit({ where })], NOW);
    expect(unfolded(file)).toContain('LOCATION:Ward 3\\; bed "2"\\, C:\\\\left\\nsecond floor');
    expect(readCalendar(file)[0]?.location).toBe(where);
  });

  it("a text cannot begin a line of its own", () => {
    const where = "Room 1\r\nATTENDEE:mailto:somebody@example.org";
    const file = calendarFile([visit({ where })], NOW);
    expect(names(file)).not.toContain("ATTENDEE");
    expect(readCalendar(file)).toHaveLength(1);
  });

  it("folds lines of over 75 octets, counted in UTF-8 and never within a character (3.1)", () => {
    const where = `Außenstelle ${"é".repeat(60)}${"🩻".repeat(30)} Ende`;
    const file = calendarFile([visit({ where })], NOW);
    for (const line of linesOf(file)) {
      expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      expect(line).not.toContain("\uFFFD");
      expect(Buffer.from(line).toString()).toBe(line);
    }
    expect(linesOf(file).filter((line) => line.startsWith(" ")).length).toBeGreaterThan(2);
    expect(readCalendar(file)[0]?.location).toBe(where);
  });

  it("ends every line with CRLF, the last too (3.1)", () => {
    const file = calendarFile([visit(), visit({ id: "other" })], NOW);
    expect(file.endsWith("END:VCALENDAR\r\n")).toBe(true);
    expect(file.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  });
});

describe("laws of a calendar file", () => {
  const text = fc
    .string({ minLength: 1, maxLength: 120, unit: fc.constantFrom(..."abz 09\\;,:\"'=éß🩻-") })
    .map((said) => `.${said}.`);
  const anyVisit = fc
    .record({
      id: fc.uuid(),
      revision: fc.nat({ max: 99 }),
      where: text,
      acts: text,
      start: fc.integer({ min: 0, max: 500_000 }).map((minutes) => instant(NOW + minutes * 60_000)),
      minutes: fc.integer({ min: 5, max: 480 }),
      stands: fc.constantFrom("proposed", "booked", "cancelled"),
    })
    .map(({ start, minutes, ...said }) => ({
      start,
      minutes,
      written: visit({ ...said, when: { kind: "from", start, minutes } }),
    }));
  const statuses = { proposed: "TENTATIVE", booked: "CONFIRMED", cancelled: "CANCELLED" };
  const words = { proposed: "Proposed: ", booked: "", cancelled: "Cancelled: " };

  it("what is read back is what was written, every line at most 75 octets", () => {
    const visits = fc.uniqueArray(anyVisit, {
      minLength: 1,
      maxLength: 6,
      selector: ({ written }) => written.id,
    });
    fc.assert(
      fc.property(visits, ([first, ...rest]) => {
        const all = [first!, ...rest];
        const file = calendarFile([first!.written, ...rest.map(({ written }) => written)], NOW);
        for (const line of linesOf(file)) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
        const read = readCalendar(file);
        expect(read).toHaveLength(all.length);
        for (const { start, minutes, written } of all)
          expect(read.find(({ uid }) => uid === `${written.id}@dwellbook`)).toMatchObject({
            sequence: written.revision,
            location: written.where,
            summary: `${words[written.stands]}${written.acts}`,
            start: new Date(start).toISOString(),
            minutes,
            status: statuses[written.stands],
          });
      }),
    );
  });
});
