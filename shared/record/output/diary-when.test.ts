import { describe, expect, it } from "vitest";
import { type Instant, instant, zone } from "#shared/day/instant.ts";
import { readDiaryWhen } from "./diary-when.ts";

const at = (iso: string): Instant => instant(Date.parse(iso));

/** Fri 20 Nov 2026, noon in London. */
const moment = (before: string | null) => ({
  now: at("2026-11-20T12:00Z"),
  zone: zone("Europe/London"),
  before: before === null ? null : { from: "since last emptying" as const, to: at(before) },
});
const since = (iso: string) => ({ ok: true, value: { from: "since last emptying", to: at(iso) } });

describe("when a row of a diary was emptied", () => {
  it.each([
    ["14 nov 8:00", "2026-11-14T08:00Z"],
    ["14 nov 8", "2026-11-14T08:00Z"],
    ["14 nov 730", "2026-11-14T07:30Z"],
    ["14 nov 2200", "2026-11-14T22:00Z"],
    ["14 nov 2026 8", "2026-11-14T08:00Z"],
    ["yesterday 23:50", "2026-11-19T23:50Z"],
    ["-3 8:00", "2026-11-17T08:00Z"],
    ["Sat 14 Nov 2026, 08:00", "2026-11-14T08:00Z"],
    ["8:00", "2026-11-20T08:00Z"],
    ["8", "2026-11-20T08:00Z"],
    ["now", "2026-11-20T12:00Z"],
  ])("%j in the first row ends at %s", (text, iso) => {
    expect(readDiaryWhen(text, moment(null))).toEqual(since(iso));
  });

  it.each([
    ["14:00", "2026-11-14T08:00Z", "2026-11-14T14:00Z"],
    ["1400", "2026-11-14T08:00Z", "2026-11-14T14:00Z"],
    ["14", "2026-11-14T08:00Z", "2026-11-14T14:00Z"],
    ["2 pm", "2026-11-14T08:00Z", "2026-11-14T14:00Z"],
    ["730", "2026-11-14T22:00Z", "2026-11-15T07:30Z"],
    ["8:00", "2026-11-14T08:00Z", "2026-11-15T08:00Z"],
    ["0:10", "2026-11-14T23:50Z", "2026-11-15T00:10Z"],
    ["13 nov 8:00", "2026-11-14T08:00Z", "2026-11-13T08:00Z"],
    ["+1", "2026-11-14T08:00Z", "2026-11-15T08:00Z"],
    ["+2", "2026-11-14T08:00Z", "2026-11-16T08:00Z"],
    ["+1", "2026-10-24T07:00Z", "2026-10-25T08:00Z"],
  ])(
    "%j after a row that ends at %s is %s: that day, or the next where it would run backwards",
    (text, before, iso) => {
      expect(readDiaryWhen(text, moment(before))).toEqual(since(iso));
    },
  );

  it("of an hour that comes twice takes the one that lies after the row before", () => {
    expect(readDiaryWhen("1:30", moment("2026-10-25T00:15Z"))).toEqual(since("2026-10-25T00:30Z"));
    expect(readDiaryWhen("1:15", moment("2026-10-25T00:30Z"))).toEqual(since("2026-10-25T01:15Z"));
  });

  it("a day alone is all that came in it, of 23 and 25 hours where clocks change", () => {
    const day = (from: string, to: string) => ({ ok: true, value: { from: at(from), to: at(to) } });
    expect(readDiaryWhen("14 nov", moment(null))).toEqual(day("2026-11-14T00:00Z", "2026-11-15T00:00Z"));
    expect(readDiaryWhen("yesterday", moment(null))).toEqual(day("2026-11-19T00:00Z", "2026-11-20T00:00Z"));
    expect(readDiaryWhen("29 mar", moment(null))).toEqual(day("2026-03-29T00:00Z", "2026-03-29T23:00Z"));
    expect(readDiaryWhen("25 oct", moment(null))).toEqual(day("2026-10-24T23:00Z", "2026-10-26T00:00Z"));
  });

  it("+1 after a whole day is the whole of the next, until it is not over", () => {
    const whole = { from: at("2026-10-24T23:00Z"), to: at("2026-10-26T00:00Z") };
    expect(readDiaryWhen("+1", { ...moment(null), before: whole })).toEqual({
      ok: true,
      value: { from: at("2026-10-26T00:00Z"), to: at("2026-10-27T00:00Z") },
    });
    const yesterday = { from: at("2026-11-19T00:00Z"), to: at("2026-11-20T00:00Z") };
    expect(readDiaryWhen("+1", { ...moment(null), before: yesterday })).toMatchObject({
      ok: false,
      refusal: { code: "time-in-future" },
    });
  });

  it.each([
    ["+1", null, "day-missing"],
    ["+1", "2026-11-19T12:30Z", "time-in-future"],
    ["+1", "2026-03-28T01:30Z", "time-does-not-exist"],
    ["", null, "day-missing"],
    ["soon", null, "day-not-understood"],
    ["in march", null, "day-not-exact"],
    ["~14 nov", null, "day-not-exact"],
    ["today", null, "time-in-future"],
    ["13:00", null, "time-in-future"],
    ["11:00", "2026-11-20T11:30Z", "time-in-future"],
    ["14 nov 2027", null, "day-in-future"],
    ["25:00", null, "time-not-understood"],
    ["99", "2026-11-14T08:00Z", "time-not-understood"],
    ["29 mar 1:30", null, "time-does-not-exist"],
    ["1:30", "2026-03-28T22:00Z", "time-does-not-exist"],
    ["3/4/2026 8:00", null, "day-order-unclear"],
  ])("%j after %s is refused: %s", (text, before, code) => {
    expect(readDiaryWhen(text, moment(before))).toMatchObject({ ok: false, refusal: { code } });
  });
});
