import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, type Day, day } from "./day.ts";
import { instant, zone } from "./instant.ts";
import { monthNames, printDay, printWhen } from "./print-day.ts";
import { readDay, readWhen } from "./read-day.ts";
import { readWhenAt } from "./read-when-at.ts";
import { onDay, type When, whenUnknown } from "./when.ts";
import { whenSchema } from "./when-schema.ts";

/** A Friday. */
const today = day("2026-11-06");
const noon = instant(Date.parse("2026-11-06T12:00Z"));
const past = { today, direction: "past" } as const;
const future = { today, direction: "future" } as const;
const exactly = (of: string) => ({
  ok: true,
  value: { certainty: "confirmed", when: { precision: "day", earliest: of, latest: of } },
});
const refused = (code: string) => ({ ok: false, refusal: { code } });

describe("one day, typed", () => {
  it.each([
    ["today", "2026-11-06"],
    ["yesterday", "2026-11-05"],
    ["-3", "2026-11-03"],
    ["+0", "2026-11-06"],
    ["14 oct", "2026-10-14"],
    ["14oct", "2026-10-14"],
    ["oct 14", "2026-10-14"],
    ["Oct 14th, 2025", "2025-10-14"],
    ["14 October 2025", "2025-10-14"],
    ["14-oct-2025", "2025-10-14"],
    ["14oct2025", "2025-10-14"],
    ["1st sept", "2026-09-01"],
    ["  14   OCT  ", "2026-10-14"],
    ["14.10.2026", "2026-10-14"],
    ["14/10/2026", "2026-10-14"],
    ["10/14/2026", "2026-10-14"],
    ["4/4/2026", "2026-04-04"],
    ["2026-10-14", "2026-10-14"],
    ["2026-3-4", "2026-03-04"],
  ])("%j is %s", (text, of) => {
    expect(readWhen(text, past)).toEqual(exactly(of));
    expect(readDay(text, past)).toEqual({ ok: true, value: of });
  });

  it.each([
    ["6 nov", "2026-11-06", "2026-11-06"],
    ["7 nov", "2025-11-07", "2026-11-07"],
    ["5 nov", "2026-11-05", "2027-11-05"],
    ["29 feb", "2024-02-29", "2028-02-29"],
    ["31 dec", "2025-12-31", "2026-12-31"],
  ])("%s without a year: %s when it happened, %s when it is planned", (text, happened, planned) => {
    expect(readWhen(text, past)).toEqual(exactly(happened));
    expect(readWhen(text, future)).toEqual(exactly(planned));
  });

  it.each([
    ["tomorrow", "2026-11-07"],
    ["+5", "2026-11-11"],
    ["7 nov 2026", "2026-11-07"],
  ])("%s is planned for %s, and cannot have happened", (text, of) => {
    expect(readWhen(text, future)).toEqual(exactly(of));
    expect(readWhen(text, past)).toEqual({
      ok: false,
      refusal: { code: "day-in-future", args: { day: printDay(of as Day) } },
    });
  });

  it.each([
    ["Fri 6 Nov 2026", "2026-11-06"],
    ["thursday 5 nov", "2026-11-05"],
    ["wed 14 oct 2026", "2026-10-14"],
  ])("%s: a weekday may stand before it", (text, of) => {
    expect(readWhen(text, past)).toEqual(exactly(of));
  });

  it("a weekday that does not fit the day is told", () => {
    const args = { day: "Fri 6 Nov 2026", weekday: "Thursday" };
    expect(readWhen("thu 6 nov 2026", past)).toEqual({
      ok: false,
      refusal: { code: "weekday-differs", args },
    });
    expect(readWhen("fri march", past)).toMatchObject(refused("day-not-understood"));
  });

  it("a plan may be overdue: a past day with its year stands", () => {
    expect(readWhen("1 oct 2026", future)).toEqual(exactly("2026-10-01"));
    expect(readWhen("-2", future)).toEqual(exactly("2026-11-04"));
  });

  it.each(["3/4/2026", "03.04.2026", "12/11/2025"])("%s can be read two ways: it asks", (text) => {
    expect(readWhen(text, past)).toMatchObject(refused("day-order-unclear"));
  });

  it.each([
    "31 feb",
    "30 feb 2026",
    "29 feb 2025",
    "2026-02-30",
    "14/13/2026",
    "32 nov",
    "0 nov",
    "13/2026",
    "2026-00",
    "1850",
    "14 nov 1850",
    "31-32 oct",
  ])("%s does not exist", (text) => {
    expect(readWhen(text, past)).toMatchObject(refused("day-does-not-exist"));
  });

  it.each([
    "soon",
    "14",
    "14/10",
    "14/10/26",
    "14 foo",
    "nov nov",
    "in 3 days",
    "1-2-3-4",
    "--3",
    "14 no",
    "2026-10-14T10:00",
  ])("%j is not understood", (text) => {
    expect(readWhen(text, past)).toMatchObject(refused("day-not-understood"));
  });

  it("an empty field is missing, an essay is cut short before it is quoted", () => {
    expect(readWhen("  ", past)).toEqual(refused("day-missing"));
    expect(readWhen("~", past)).toEqual(refused("day-missing"));
    const long = readWhen("x".repeat(5000), past);
    expect(!long.ok && String(long.refusal.args?.text).length).toBe(63);
  });
});

describe("a date less exact than a day", () => {
  it.each([
    ["march", "month", "2026-03-01", "2026-03-31"],
    ["in March", "month", "2026-03-01", "2026-03-31"],
    ["some time in march", "month", "2026-03-01", "2026-03-31"],
    ["march 2025", "month", "2025-03-01", "2025-03-31"],
    ["03/2025", "month", "2025-03-01", "2025-03-31"],
    ["2025-03", "month", "2025-03-01", "2025-03-31"],
    ["december", "month", "2025-12-01", "2025-12-31"],
    ["november", "month", "2026-11-01", "2026-11-06"],
    ["2025", "year", "2025-01-01", "2025-12-31"],
    ["2026", "year", "2026-01-01", "2026-11-06"],
    ["14-20 oct", "span", "2026-10-14", "2026-10-20"],
    ["14–20 oct 2025", "span", "2025-10-14", "2025-10-20"],
    ["oct 14-20", "span", "2026-10-14", "2026-10-20"],
    ["oct 14-20, 2025", "span", "2025-10-14", "2025-10-20"],
    ["4-10 nov", "span", "2026-11-04", "2026-11-06"],
    ["7-10 nov", "span", "2025-11-07", "2025-11-10"],
    ["28 oct - 3 nov", "span", "2026-10-28", "2026-11-03"],
    ["28 dec to 3 jan", "span", "2025-12-28", "2026-01-03"],
    ["28 dec 2024 to 3 jan", "span", "2024-12-28", "2025-01-03"],
    ["2025-12-28 to 2026-01-03", "span", "2025-12-28", "2026-01-03"],
  ])("%s is a %s from %s to %s", (text, precision, earliest, latest) => {
    expect(readWhen(text, past)).toEqual({
      ok: true,
      value: { certainty: "confirmed", when: { precision, earliest, latest } },
    });
    expect(readDay(text, past)).toMatchObject(refused("day-not-exact"));
  });

  it.each([
    ["november", "2026-11-01", "2026-11-30"],
    ["march", "2027-03-01", "2027-03-31"],
    ["28 dec - 3 jan", "2026-12-28", "2027-01-03"],
  ])("planned for %s is from %s to %s", (text, earliest, latest) => {
    expect(readWhen(text, future)).toMatchObject({ value: { when: { earliest, latest } } });
  });

  it.each(["december 2026", "2027", "12/2026", "7-10 nov 2026"])("%s has not happened yet", (text) => {
    expect(readWhen(text, past)).toMatchObject(refused("day-in-future"));
  });

  it.each(["20-14 oct", "oct 20-14 2025", "3 nov 2026 to 28 oct 2026", "3 nov 2026 to 3 nov 2025"])(
    "%s runs backwards",
    (text) => {
      expect(readWhen(text, past)).toMatchObject(refused("days-reversed"));
    },
  );
});

describe("certainty costs no typing", () => {
  it.each(["?", " ? ", "~?", "unknown"])("%j is unknown", (text) => {
    expect(readWhen(text, past)).toEqual({
      ok: true,
      value: { certainty: "unknown", when: { precision: "unknown", earliest: null, latest: null } },
    });
  });

  it.each(["~14 oct", "~ 14 oct", "~-23"])("%s is estimated, and not exact", (text) => {
    expect(readWhen(text, past)).toMatchObject({
      value: { certainty: "estimated", when: { earliest: "2026-10-14", latest: "2026-10-14" } },
    });
    expect(readDay(text, past)).toMatchObject(refused("day-not-exact"));
  });
});

describe("whatever is typed", () => {
  const word = fc.constantFrom(
    "~",
    "?",
    "-",
    "to",
    "in",
    "/",
    ".",
    "+",
    " ",
    "today",
    "nov",
    "feb",
    "march",
    "st",
  );
  const typed = fc.oneof(
    fc.string({ maxLength: 80 }),
    fc
      .array(fc.oneof(word, fc.integer({ min: 0, max: 2300 }).map(String)), { maxLength: 8 })
      .map((parts) => parts.join("")),
  );

  it("is read or refused with a code, never thrown; what is read is a valid date, and none of the past is to come", () => {
    fc.assert(
      fc.property(typed, fc.constantFrom(past, future), (text, context) => {
        const read = readWhen(text, context);
        if (!read.ok) return;
        expect(whenSchema.safeParse(read.value.when).success).toBe(true);
        if (context === past) expect((read.value.when.latest ?? today) <= today).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it("what printWhen prints is read back as what it was", () => {
    const anyDay = fc.integer({ min: 1, max: 40_000 }).map((away) => addDays(today, -away));
    const anyWhen = fc.oneof(
      anyDay.map((of): When => onDay(of)),
      fc
        .tuple(anyDay, fc.integer({ min: 0, max: 500 }))
        .map(([of, days]): When => ({ precision: "span", earliest: addDays(of, -days), latest: of })),
      fc.constant(whenUnknown),
    );
    fc.assert(
      fc.property(anyWhen, (when) => {
        const read = readWhenAt(printWhen(when), { now: noon, zone: zone("UTC") });
        expect(read).toEqual({ ok: true, value: { when, time: null } });
      }),
    );
  });

  it("a day printed in any of its forms is read back", () => {
    const anyDay = fc.integer({ min: 0, max: 60_000 }).map((away) => addDays(today, -away % 40_000));
    fc.assert(
      fc.property(anyDay, (of) => {
        const [year, month, date] = of.split("-").map(Number);
        const name = monthNames[(month ?? 0) - 1];
        for (const text of [of, `${date} ${name} ${year}`, `${name?.slice(0, 3)} ${date}, ${year}`]) {
          expect(readDay(text, past)).toEqual({ ok: true, value: of });
        }
      }),
    );
  });
});
