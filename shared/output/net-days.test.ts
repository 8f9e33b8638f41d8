import { describe, expect, it } from "vitest";
import { zone } from "#shared/day/instant.ts";
import { at, clinicZone, flush, gross, netDaysInput, reading } from "#tests/factories/reading.ts";
import { lowDay } from "./low-day.ts";
import { millilitres, toMl } from "./microlitre.ts";
import type { NetDay } from "./net-day.ts";
import { netDays } from "./net-days.ts";
import type { Reading } from "./reading.ts";

const HOUR = 3_600_000;
/** New York in November 2026, before and after the clocks go back on the 1st. */
const ny = (time: string) => at(`${time}-05:00`);

const days = (readings: readonly Reading[], overrides: Parameters<typeof netDaysInput>[1] = {}) =>
  netDays(netDaysInput(readings, overrides)).days;
const dayOf = (all: readonly NetDay[], of: string) => all.filter(({ day }) => day === of);
const netMl = (day: NetDay | undefined) => (day?.net.kind === "known" ? toMl(day.net.ul) : day?.net.kind);
const collection = { role: "collection", mode: "to bag", row: { lowNetMl: 10 } } as const;

/** One reading a whole day, so many days running from Mon 2 Nov 2026. */
const daily = (...changes: Partial<Reading>[]) =>
  changes.map((change, index) =>
    reading({
      id: `day-${index + 1}`,
      from: ny(`2026-11-0${index + 2}T00:00`),
      to: ny(`2026-11-0${index + 3}T00:00`),
      ...change,
    }),
  );

describe("a whole day", () => {
  it("with 25 mL and 8 mL of flush is complete and nets 17", () => {
    const [first] = days([reading({ flushGiven: flush(8) })]);
    expect(first).toEqual({
      day: "2026-11-02",
      segment: 0,
      from: ny("2026-11-02T00:00"),
      to: ny("2026-11-03T00:00"),
      whole: true,
      net: { kind: "known", ul: 17_000, mlPer24h: 17 },
      coveredMs: 24 * HOUR,
      complete: true,
      because: [],
      remarks: [],
      readings: ["reading-1"],
    });
  });

  it("62 mL in 31 hours run at 48 mL/24 h on both days (arithmetic)", () => {
    const [monday, tuesday] = days([reading({ gross: gross(62), to: ny("2026-11-03T07:00") })]);
    expect(monday?.net).toEqual({ kind: "known", ul: 48_000, mlPer24h: 48 });
    expect(tuesday?.net).toEqual({ kind: "known", ul: 14_000, mlPer24h: 48 });
    expect([monday?.complete, tuesday?.because]).toEqual([true, ["gap"]]);
  });

  it("hard case 6: 35 mL with 30 mL of flush is 5; 20 with 30 is -10, stands, and says that the flush does not come back", () => {
    const [five, minusTen] = days(
      daily({ gross: gross(35), flushGiven: flush(30) }, { gross: gross(20), flushGiven: flush(30) }),
    );
    expect([netMl(five), five?.remarks]).toEqual([5, []]);
    expect([netMl(minusTen), minusTen?.remarks]).toEqual([-10, ["flush-does-not-come-back"]]);
    expect(lowDay(five as NetDay, collection)).toEqual({ kind: "low" });
    expect(lowDay(minusTen as NetDay, collection)).toEqual({
      kind: "cannot tell",
      because: ["flush-does-not-come-back"],
    });
  });

  it.each([
    [20.001, []],
    [20, ["flush-does-not-come-back"]],
    [19.999, ["flush-does-not-come-back"]],
  ])("%f mL with 30 of flush: %j", (ml, remarks) => {
    expect(days([reading({ gross: gross(ml), flushGiven: flush(30) })])[0]?.remarks).toEqual(remarks);
  });

  it("hard case 6: an entry already net is marked as net", () => {
    const [only] = days([reading({ gross: gross(20), flushGiven: flush(30), basis: "already net" })]);
    expect([netMl(only), only?.remarks]).toEqual([20, ["already-net"]]);
  });

  it("flush ordered and not recorded: cannot tell, and no low day", () => {
    const [only] = days([reading({ gross: gross(0), flushGiven: "not recorded" })]);
    expect(only?.net).toEqual({ kind: "cannot tell", because: ["flush-not-recorded"] });
    expect(only?.complete).toBe(false);
    expect(lowDay(only as NetDay, collection).kind).toBe("cannot tell");
  });

  it("hard case 31: when the order changes mid-series, what was given is subtracted", () => {
    const changed = [{ from: ny("2026-11-03T00:00"), to: ny("2026-11-04T00:00") }];
    const series = daily(
      { flushGiven: "not recorded" },
      { flushGiven: flush(10) },
      { flushGiven: flush(5) },
      { flushGiven: "not recorded" },
    );
    expect(days(series, { flushOrdered: changed }).slice(0, 4).map(netMl)).toEqual([25, 15, 20, 25]);
    const stillOrdered = days(series, { flushOrdered: [{ from: ny("2026-11-05T00:00"), to: null }] });
    expect(stillOrdered.slice(0, 4).map(netMl)).toEqual([25, 15, 20, "cannot tell"]);
  });

  it("hard case 28: other fluid that went in is told and not subtracted", () => {
    const otherIn = [{ fluid: "irrigation" as const, ul: millilitres(20) }];
    const [only] = days([reading({ otherIn, flushGiven: flush(8) })]);
    expect([netMl(only), only?.remarks]).toEqual([17, ["other-fluid-went-in"]]);
  });
});

describe("zero, missing and unknown", () => {
  it("hard case 5: a nephrostomy's 0 mL is a figure of 0 over its hours, and never a sign for removal", () => {
    const [monday] = days([reading({ gross: gross(0) })], { flushOrdered: false });
    expect(monday?.net).toEqual({ kind: "known", ul: 0, mlPer24h: 0 });
    expect(lowDay(monday as NetDay, { ...collection, role: "drains an organ" })).toEqual({
      kind: "does not apply",
      because: "role",
    });
    expect(lowDay(monday as NetDay, { ...collection, mode: "capped" })).toEqual({
      kind: "does not apply",
      because: "mode",
    });
  });

  it("hard case 7: emptied at 23:50 and at 00:10 with 0 mL: 20 minutes are no low day", () => {
    const all = days([
      reading({ id: "a", gross: gross(200), from: ny("2026-11-02T08:00"), to: ny("2026-11-02T23:50") }),
      reading({ id: "b", gross: gross(0), from: "since last emptying", to: ny("2026-11-03T00:10") }),
    ]);
    const [tuesday] = dayOf(all, "2026-11-03");
    expect(netMl(tuesday)).toBe(0);
    expect(tuesday).toMatchObject({ coveredMs: 10 * 60_000, complete: false, because: ["gap"] });
    expect(lowDay(tuesday as NetDay, collection)).toEqual({ kind: "cannot tell", because: ["gap"] });
  });

  it("hard case 7: then once after 31 hours: a rate by elapsed time, and the gap is seen", () => {
    const all = days([
      reading({ id: "a", gross: gross(0), to: ny("2026-11-02T12:00") }),
      reading({ id: "b", gross: gross(62), from: "since last emptying", to: ny("2026-11-03T19:00") }),
      reading({ id: "c", gross: gross(10), from: ny("2026-11-05T08:00"), to: ny("2026-11-05T20:00") }),
    ]);
    expect(all.map(({ day, because }) => [day, because])).toEqual([
      ["2026-11-02", []],
      ["2026-11-03", ["gap"]],
      ["2026-11-04", ["no-reading"]],
      ["2026-11-05", ["gap"]],
      ["2026-11-06", ["no-reading"]],
      ["2026-11-07", ["no-reading"]],
      ["2026-11-08", ["no-reading"]],
      ["2026-11-09", ["no-reading", "day-in-progress"]],
    ]);
    expect(all.map(netMl).slice(0, 4)).toEqual([24, 38, "missing", 10]);
    expect(all[1]?.net).toMatchObject({ mlPer24h: 48 });
  });

  it("an unknown volume covers its time and tells nothing", () => {
    const [only] = days([reading({ gross: { certainty: "unknown" } })]);
    expect(only).toMatchObject({
      net: { kind: "cannot tell", because: ["volume-unknown"] },
      coveredMs: 24 * HOUR,
      complete: false,
    });
  });

  it.each([
    ["an estimate", { measuredBy: "estimate" }, "estimated"],
    ["a volume typed with ~", { gross: { certainty: "estimated", value: millilitres(5) } }, "estimated"],
    ["an estimated flush", { flushGiven: { ul: millilitres(2), estimated: true } }, "estimated"],
    ["a leak round the tube (hard case 16)", { leak: "soaking" }, "leak-round-tube"],
  ] satisfies [string, Partial<Reading>, string][])("%s is no low day", (_what, change, remark) => {
    const low = (ml: number) =>
      lowDay(days([reading({ gross: gross(ml), ...change })])[0] as NetDay, collection);
    expect(low(5)).toEqual({ kind: "cannot tell", because: [remark] });
  });

  it.each([
    [9.999, "low"],
    [10, "not low"],
    [10.001, "not low"],
  ])("%f mL against a row of 10 is %s", (ml, kind) => {
    expect(lowDay(days([reading({ gross: gross(ml) })])[0] as NetDay, collection).kind).toBe(kind);
  });

  it("no reading and no placement date: no days; with a placement date every day is there and missing", () => {
    expect(days([])).toEqual([]);
    const all = days([], { placedAt: ny("2026-11-08T15:00") });
    expect(all.map(({ day, net }) => [day, net.kind])).toEqual([
      ["2026-11-08", "missing"],
      ["2026-11-09", "missing"],
    ]);
    expect(all[0]?.because).toEqual(["no-reading", "part-of-a-day"]);
  });
});

describe("segments", () => {
  it("end where size or mode changed: the day is cut in two parts, neither complete, and nothing is lost", () => {
    const all = days(daily({ gross: gross(24) }, { gross: gross(48) }), { cuts: [ny("2026-11-03T06:00")] });
    expect(all.slice(0, 3).map((part) => [part.day, part.segment, netMl(part), part.because])).toEqual([
      ["2026-11-02", 0, 24, []],
      ["2026-11-03", 0, 12, ["part-of-a-day"]],
      ["2026-11-03", 1, 36, ["part-of-a-day"]],
    ]);
  });

  it("at midnight cut no day", () => {
    const all = days(daily({}, {}), { cuts: [ny("2026-11-03T00:00")] });
    expect(all.slice(0, 2).map(({ segment, complete }) => [segment, complete])).toEqual([
      [0, true],
      [1, true],
    ]);
  });

  it("end with the tube: no gap is seen after it is out", () => {
    const all = days(daily({}, {}), { outAt: ny("2026-11-04T00:00"), placedAt: ny("2026-11-02T00:00") });
    expect(all.map(({ day, complete }) => [day, complete])).toEqual([
      ["2026-11-02", true],
      ["2026-11-03", true],
    ]);
  });
});

describe("the aspirate at placement", () => {
  it("hard case 27: 600 mL in the first bag are told apart, in no day and no trend", () => {
    const told = netDays(
      netDaysInput([
        reading({ id: "bag", gross: gross(600), to: ny("2026-11-02T10:00"), procedureAspirate: true }),
        reading({ id: "next", gross: gross(30), from: "since last emptying", to: ny("2026-11-03T00:00") }),
      ]),
    );
    expect(told.aspirates.map(({ id }) => id)).toEqual(["bag"]);
    expect(netMl(told.days[0])).toBe(30);
    expect(told.days[0]?.because).toEqual(["gap", "procedure-aspirate"]);
    expect(told.days[0]?.coveredMs).toBe(14 * HOUR);
  });
});

describe("what cannot be placed in time", () => {
  it("since last emptying, and there was none: a problem, unless the placement is known", () => {
    const bag = reading({ from: "since last emptying" });
    expect(netDays(netDaysInput([bag])).problems).toEqual([{ code: "no-start", readings: ["reading-1"] }]);
    const placed = netDays(netDaysInput([bag], { placedAt: ny("2026-11-02T18:00") }));
    expect(placed.problems).toEqual([]);
    expect([netMl(placed.days[0]), placed.days[0]?.because]).toEqual([25, ["part-of-a-day"]]);
  });

  it("a reading that ends in the future counts in no day", () => {
    const told = netDays(netDaysInput(daily({}, {}), { now: ny("2026-11-03T12:00") }));
    expect(told.problems).toEqual([{ code: "ends-in-future", readings: ["day-2"] }]);
    expect(told.days.map(netMl)).toEqual([25, "missing"]);
  });

  it("a reading and a day that end this very instant are over", () => {
    const told = netDays(netDaysInput(daily({}), { now: ny("2026-11-03T00:00") }));
    expect(told.problems).toEqual([]);
    expect(told.days.map(({ complete }) => complete)).toEqual([true, false]);
    expect(told.days[1]?.because).toEqual(["no-reading", "day-in-progress"]);
  });

  it("two readings of the same time are a problem, never summed silently", () => {
    const told = netDays(
      netDaysInput([
        ...daily({}, {}),
        reading({ id: "late", from: ny("2026-11-03T20:00"), to: ny("2026-11-04T08:00") }),
      ]),
    );
    expect(told.problems).toEqual([
      {
        code: "overlap",
        readings: ["day-2", "late"],
        from: ny("2026-11-03T20:00"),
        to: ny("2026-11-04T00:00"),
      },
    ]);
    expect(told.days.slice(0, 3).map(netMl)).toEqual([25, "cannot tell", 16.667]);
    expect(told.days[1]).toMatchObject({ coveredMs: 24 * HOUR, because: ["overlap"] });
  });

  it("one long reading over two short ones is told twice", () => {
    const long = reading({ id: "long", from: ny("2026-11-02T00:00"), to: ny("2026-11-04T00:00") });
    const { problems } = netDays(netDaysInput([...daily({}, {}), long]));
    expect(problems.map(({ readings }) => readings)).toEqual([
      ["day-1", "long"],
      ["long", "day-2"],
    ]);
  });
});

describe("hard case 8: clock changes, travel and midnight", () => {
  it("a day of 25 hours is complete only with all of them, and its rate is scaled", () => {
    const sunday = (hours: number) =>
      reading({
        gross: gross(hours),
        from: at("2026-11-01T04:00Z"),
        to: at(`2026-11-02T0${hours - 20}:00Z`),
      });
    expect(days([sunday(25)])[0]).toMatchObject({
      day: "2026-11-01",
      complete: true,
      coveredMs: 25 * HOUR,
      net: { mlPer24h: 24 },
    });
    expect(days([sunday(24)])[0]).toMatchObject({ complete: false, because: ["gap"] });
  });

  it("a day of 23 hours is complete with 23", () => {
    const [only] = days([
      reading({ gross: gross(23), from: at("2026-03-08T05:00Z"), to: at("2026-03-09T04:00Z") }),
    ]);
    expect(only).toMatchObject({ day: "2026-03-08", complete: true, net: { ul: 23_000, mlPer24h: 24 } });
  });

  it("a day whose midnight does not exist begins after the jump", () => {
    const santiago = zone("America/Santiago");
    const [only] = days(
      [
        reading({
          gross: gross(23),
          from: at("2026-09-06T04:00Z"),
          to: at("2026-09-07T03:00Z"),
          zone: santiago,
        }),
      ],
      { zone: santiago },
    );
    expect(only).toMatchObject({ day: "2026-09-06", complete: true, coveredMs: 23 * HOUR });
  });

  it("a reading taken on a journey falls on the clinic's day", () => {
    const away = reading({ zone: zone("Pacific/Kiritimati") });
    expect(days([away])[0]).toEqual(days([reading()])[0]);
    expect(days([away], { zone: clinicZone })[0]?.day).toBe("2026-11-02");
  });
});
