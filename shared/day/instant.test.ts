import fc from "fast-check";
import { DateTime } from "luxon";
import { describe, expect, it } from "vitest";
import { addDays, type Day, day } from "./day.ts";
import {
  clockText,
  dayAt,
  endOfDay,
  type Instant,
  instant,
  instantAt,
  isZone,
  startOfDay,
  zone,
} from "./instant.ts";
import { instantSchema } from "./instant-schema.ts";

const newYork = zone("America/New_York");
const santiago = zone("America/Santiago");
const kiritimati = zone("Pacific/Kiritimati");
const at = (iso: string): Instant => instant(Date.parse(iso));
const hours = (of: string, where: typeof newYork) =>
  (endOfDay(day(of), where) - startOfDay(day(of), where)) / 3_600_000;

const zones = [newYork, santiago, kiritimati, zone("Europe/London"), zone("Asia/Kathmandu"), zone("UTC")];
const anyZone = fc.constantFrom(...zones);
/** 2012 to 2049: years in which both libraries read the same table. */
const anyDay = fc.integer({ min: 0, max: 13_879 }).map((away) => addDays(day("2012-01-01"), away));
const anyInstant = fc
  .integer({ min: Date.UTC(2012, 0, 1), max: Date.UTC(2049, 11, 31) })
  .map((ms) => instant(ms));

describe("an instant", () => {
  it.each([Number.NaN, 0.5, Number.POSITIVE_INFINITY, Date.UTC(2200, 0, 1), Date.UTC(1899, 11, 31)])(
    "is not %s",
    (ms) => {
      expect(() => instant(ms)).toThrow(RangeError);
      expect(instantSchema.safeParse(ms).success).toBe(false);
    },
  );
});

describe("a zone", () => {
  it.each(["UTC", "America/Santiago", "America/Argentina/Buenos_Aires"])("%s is one", (text) => {
    expect(isZone(text)).toBe(true);
  });

  it.each(["", "toString", "America/Nowhere", "+05:00", "EST5EDT; drop", "local"])("%s is none", (text) => {
    expect(isZone(text)).toBe(false);
    expect(() => zone(text)).toThrow(RangeError);
  });
});

describe("the day of an instant", () => {
  it.each([
    ["2026-11-07T04:59:59.999Z", newYork, "2026-11-06", "23:59"],
    ["2026-11-07T05:00:00Z", newYork, "2026-11-07", "00:00"],
    ["2026-11-07T10:00:00Z", kiritimati, "2026-11-08", "00:00"],
    ["2026-11-07T09:59:00Z", kiritimati, "2026-11-07", "23:59"],
  ])("%s in %s is %s %s", (iso, where, of, clock) => {
    expect(dayAt(at(iso), where)).toBe(of);
    expect(clockText(at(iso), where)).toBe(clock);
  });

  it("agrees with luxon, as does the clock", () => {
    fc.assert(
      fc.property(anyInstant, anyZone, (moment, where) => {
        const other = DateTime.fromMillis(moment, { zone: where });
        expect(dayAt(moment, where)).toBe(other.toISODate());
        expect(clockText(moment, where)).toBe(other.toFormat("HH:mm"));
      }),
    );
  });
});

describe("a day's first instant", () => {
  // IANA time zone database: New York changes at 2 o'clock on 2026-03-08 and 2026-11-01; Santiago at midnight.
  it.each([
    ["2026-03-08", newYork, 23],
    ["2026-11-01", newYork, 25],
    ["2026-11-02", newYork, 24],
    ["2026-09-06", santiago, 23],
    ["2026-04-04", santiago, 25],
    ["2026-04-05", santiago, 24],
    ["2011-12-30", zone("Pacific/Apia"), 0],
  ])("%s in %s lasts %i hours", (of, where, length) => {
    expect(hours(of, where)).toBe(length);
  });

  it("where midnight does not exist is the end of the jump", () => {
    const start = startOfDay(day("2026-09-06"), santiago);
    expect(start).toBe(at("2026-09-06T04:00:00Z"));
    expect(clockText(start, santiago)).toBe("01:00");
  });

  it("lies on the day, right after the day before, and agrees with luxon", () => {
    fc.assert(
      fc.property(anyDay, anyZone, (of, where) => {
        const start = startOfDay(of, where);
        expect(dayAt(start, where)).toBe(of);
        expect(dayAt(instant(start - 1), where)).toBe(addDays(of, -1));
        expect(start).toBe(DateTime.fromISO(of, { zone: where }).startOf("day").toMillis());
      }),
    );
  });
});

describe("a time typed beside a day", () => {
  const typed = (of: string, text: string, where = newYork) => instantAt(day(of) as Day, text, where);

  it.each([
    ["14:05", "14:05"],
    ["1405", "14:05"],
    ["9:30", "09:30"],
    ["930", "09:30"],
    ["0930", "09:30"],
    [" 9.30 ", "09:30"],
    ["0:00", "00:00"],
    ["23:59", "23:59"],
    ["2:05 pm", "14:05"],
    ["7PM", "19:00"],
    ["12:10 am", "00:10"],
    ["12:10 pm", "12:10"],
  ])("%s is %s", (text, clock) => {
    const read = typed("2026-06-15", text);
    expect(read.ok && clockText(read.value, newYork)).toBe(clock);
    expect(read.ok && dayAt(read.value, newYork)).toBe("2026-06-15");
  });

  it.each(["", "24:00", "12:60", "14", "14:5", "13:00 pm", "0:30 am", "noon", "-1:00", "1e3", "14:05:30"])(
    "%j is refused",
    (text) => {
      expect(typed("2026-06-15", text)).toEqual({
        ok: false,
        refusal: { code: "time-not-understood", args: { text } },
      });
    },
  );

  it.each([
    ["2026-03-08", "2:00", newYork],
    ["2026-03-08", "2:59", newYork],
    ["2026-09-06", "0:00", santiago],
    ["2026-09-06", "0:59", santiago],
  ])("on %s the clocks go forward over %s in %s", (of, text, where) => {
    expect(typed(of, text, where)).toEqual({
      ok: false,
      refusal: { code: "time-does-not-exist", args: { text, day: of } },
    });
  });

  it.each([
    ["2026-03-08", "1:59", newYork, "2026-03-08T06:59:00Z"],
    ["2026-03-08", "3:00", newYork, "2026-03-08T07:00:00Z"],
    ["2026-11-01", "1:30", newYork, "2026-11-01T05:30:00Z"],
    ["2026-04-04", "23:30", santiago, "2026-04-05T02:30:00Z"],
  ])("%s %s in %s is %s: a doubled hour is the earlier one", (of, text, where, iso) => {
    expect(typed(of, text, where)).toEqual({ ok: true, value: at(iso) });
  });
});
