import { describe, expect, it } from "vitest";
import { instant, zone } from "./instant.ts";
import { printMoment, printWhen } from "./print-day.ts";
import { readInstant, readWhenAt } from "./read-when-at.ts";

/** Fri 6 Nov 2026, 15:30 in London, where clocks went back on 25 Oct 2026 at 02:00 (IANA time zone database). */
const now = instant(Date.parse("2026-11-06T15:30:20.500Z"));
const moment = { now, zone: zone("Europe/London") };

describe("a date with its clock time", () => {
  it.each([
    ["today", "2026-11-06", null],
    ["now", "2026-11-06", "15:30"],
    ["14:05", "2026-11-06", "14:05"],
    ["today 14:05", "2026-11-06", "14:05"],
    ["today, 9:30", "2026-11-06", "09:30"],
    ["yesterday 23:50", "2026-11-05", "23:50"],
    ["yesterday at 11:50 pm", "2026-11-05", "23:50"],
    ["14 oct 2:05 pm", "2026-10-14", "14:05"],
    ["14 oct 2026 2pm", "2026-10-14", "14:00"],
    ["2026-10-14 08:00", "2026-10-14", "08:00"],
    ["25 oct 1:30", "2026-10-25", "01:30"],
    ["14.10.2026", "2026-10-14", null],
  ])("%j is %s at %s", (text, day, time) => {
    const when = { precision: "day", earliest: day, latest: day };
    expect(readWhenAt(text, moment)).toEqual({ ok: true, value: { when, time } });
  });

  it("keeps a partial date and an unknown one", () => {
    const march = { precision: "month", earliest: "2026-03-01", latest: "2026-03-31" };
    expect(readWhenAt("in march", moment)).toEqual({ ok: true, value: { when: march, time: null } });
    const unknown = { precision: "unknown", earliest: null, latest: null };
    expect(readWhenAt("?", moment)).toEqual({ ok: true, value: { when: unknown, time: null } });
  });

  it("makes a span of one day of an exact day with ~ before it, which does not count as exact", () => {
    const read = readWhenAt("~14 oct", moment);
    const when = { precision: "span", earliest: "2026-10-14", latest: "2026-10-14" };
    expect(read).toEqual({ ok: true, value: { when, time: null } });
    expect(read.ok && printWhen(read.value.when)).toBe("about Wed 14 Oct 2026");
  });

  it.each([
    ["", "day-missing"],
    ["tomorrow", "day-in-future"],
    ["today 15:31", "time-in-future"],
    ["today 25:00", "time-not-understood"],
    ["29 mar 1:30", "time-does-not-exist"],
    ["in march 14:05", "day-not-exact"],
    ["~14 oct 14:05", "day-not-exact"],
    ["soon", "day-not-understood"],
  ])("%j is refused: %s", (text, code) => {
    expect(readWhenAt(text, moment)).toMatchObject({ ok: false, refusal: { code } });
  });
});

it("prints the second of an hour that comes twice so that it reads again as the same", () => {
  const [earlier, later] = ["2026-10-25T00:30Z", "2026-10-25T01:30Z"].map((iso) => instant(Date.parse(iso)));
  expect(printMoment(earlier!, moment.zone)).toBe("Sun 25 Oct 2026, 01:30");
  expect(printMoment(later!, moment.zone)).toBe("Sun 25 Oct 2026, 01:30, later");
});

describe("a moment", () => {
  it.each([
    ["now", "2026-11-06T15:30Z"],
    ["14:05", "2026-11-06T14:05Z"],
    ["yesterday 23:50", "2026-11-05T23:50Z"],
    ["14 oct 08:00", "2026-10-14T07:00Z"],
    ["25 oct 1:30", "2026-10-25T00:30Z"],
    ["25 oct 1:30 later", "2026-10-25T01:30Z"],
    ["Sun 25 Oct 2026, 01:30, later", "2026-10-25T01:30Z"],
    ["25 oct 1:30 am, the later", "2026-10-25T01:30Z"],
    ["14 oct 08:00 later", "2026-10-14T07:00Z"],
  ])("%j is %s", (text, iso) => {
    expect(readInstant(text, moment)).toEqual({ ok: true, value: Date.parse(iso) });
  });

  it.each([
    ["yesterday", "time-missing"],
    ["in march", "day-not-exact"],
    ["?", "day-not-exact"],
    ["today 15:31", "time-in-future"],
  ])("%j is refused: %s", (text, code) => {
    expect(readInstant(text, moment)).toMatchObject({ ok: false, refusal: { code } });
  });
});
