import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { instant, zone } from "#shared/day/instant.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { at, netDaysInput, reading } from "#tests/factories/reading.ts";
import { lowDay } from "./low-day.ts";
import { type Microlitres, microlitres, sum } from "./microlitre.ts";
import type { NetDay } from "./net-day.ts";
import { netDays } from "./net-days.ts";
import type { Reading } from "./reading.ts";

const zones = ["UTC", "America/New_York", "America/Santiago", "Pacific/Kiritimati", "Europe/London"].map(
  zone,
);
const anyZone = fc.constantFrom(...zones);
/** Around the clock changes of 2026. */
const anyStart = fc.constantFrom(
  at("2026-03-06T11:00Z"),
  at("2026-04-03T20:00Z"),
  at("2026-09-04T02:00Z"),
  at("2026-10-24T09:00Z"),
);
const minutes = (count: number) => count * 60_000;
/** Three days after the last reading. */
const nowAfter = (readings: readonly Reading[]) =>
  instant(Math.max(...readings.map(({ to }) => to)) + minutes(3 * 24 * 60));

/** A net that another chart wrote down, of any sign, so that a reading can be split without a flush in the way. */
const net = (id: string, from: number, rest: { to: number; ul: number }): Reading =>
  reading({
    id,
    from: instant(from),
    to: instant(rest.to),
    gross: confirmed(microlitres(rest.ul)),
    basis: "already net",
  });

const steps = fc.array(
  fc.record({
    gap: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 3000 })),
    lasts: fc.integer({ min: 1, max: 4000 }),
    ul: fc.integer({ min: -60_000, max: 900_000 }),
  }),
  { minLength: 1, maxLength: 8 },
);

/** Readings in a row that do not overlap, with gaps between some. */
const seriesFrom = (start: number) =>
  steps.map((made) => {
    let from = start;
    return made.map(({ gap, lasts, ul }, index) => {
      from += minutes(gap);
      const one = net(`r${index}`, from, { to: from + minutes(lasts), ul });
      from += minutes(lasts);
      return one;
    });
  });
const anySeries = anyStart.chain(seriesFrom);

const daysOf = (readings: readonly Reading[], where = zones[0]!, cuts: readonly number[] = []) =>
  netDays(
    netDaysInput(readings, { zone: where, now: nowAfter(readings), cuts: cuts.map(instant) }),
  ).days.filter(({ readings: from, net: of }) => from.length > 0 || of.kind !== "missing");
const ulOf = (day: NetDay): Microlitres => (day.net.kind === "known" ? day.net.ul : microlitres(0));
const total = (days: readonly NetDay[]) => sum(days.map(ulOf));
const grossOf = (readings: readonly Reading[]) =>
  sum(readings.map(({ gross }) => (gross.certainty === "unknown" ? microlitres(0) : gross.value)));

describe("laws of net days", () => {
  it("the net of all days is the net of all readings, to the microlitre, in every zone, however it is cut", () => {
    const cuts = fc.array(fc.integer({ min: at("2026-03-06T00:00Z"), max: at("2026-11-30T00:00Z") }), {
      maxLength: 4,
    });
    fc.assert(
      fc.property(anySeries, anyZone, cuts, (series, where, cut) => {
        expect(total(daysOf(series, where))).toBe(grossOf(series));
        expect(total(daysOf(series, where, cut))).toBe(grossOf(series));
      }),
    );
  });

  it("a cut splits days and moves nothing between them", () => {
    fc.assert(
      fc.property(anySeries, anyZone, fc.integer({ min: 0, max: 20_000 }), (series, where, after) => {
        const cut = (series[0]!.from as number) + minutes(after);
        const byDay = (days: readonly NetDay[]) => {
          const sums = new Map<string, number>();
          for (const day of days) sums.set(day.day, (sums.get(day.day) ?? 0) + ulOf(day));
          return sums;
        };
        expect(byDay(daysOf(series, where, [cut]))).toEqual(byDay(daysOf(series, where)));
      }),
    );
  });

  it("splitting a reading at any instant changes no day by more than a microlitre", () => {
    fc.assert(
      fc.property(anySeries, anyZone, fc.nat(), (series, where, pick) => {
        const whole = series[pick % series.length]!;
        const [from, to] = [whole.from as number, whole.to as number];
        const middle = from + 1 + (pick % (to - from - 1));
        const all = grossOf([whole]);
        const first = Math.round((all * (middle - from)) / (to - from));
        const halves = [
          net("first", from, { to: middle, ul: first }),
          net("second", middle, { to, ul: all - first }),
        ];
        const before = daysOf(series, where);
        const after = daysOf([...series.filter((one) => one !== whole), ...halves], where);
        expect(after.map(({ day, coveredMs }) => [day, coveredMs])).toEqual(
          before.map(({ day, coveredMs }) => [day, coveredMs]),
        );
        for (const [index, day] of before.entries()) {
          expect(Math.abs(ulOf(day) - ulOf(after[index]!))).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  it("the order of entry changes nothing, not even with overlaps", () => {
    const anyReadings = anyStart
      .chain((start) => fc.tuple(seriesFrom(start), seriesFrom(start)))
      .map(([one, other]) => [...one, ...other.map((made) => ({ ...made, id: `other-${made.id}` }))])
      .chain((made) => fc.tuple(fc.constant(made), fc.shuffledSubarray(made, { minLength: made.length })));
    fc.assert(
      fc.property(anyReadings, anyZone, ([made, shuffled], where) => {
        const told = (readings: readonly Reading[]) => {
          const { days, problems } = netDays(
            netDaysInput(readings, { zone: where, now: nowAfter(readings) }),
          );
          return { days, problems };
        };
        expect(told(shuffled)).toEqual(told(made));
      }),
    );
  });

  it("a zone moves days, not totals", () => {
    fc.assert(
      fc.property(anySeries, anyZone, anyZone, (series, here, there) => {
        const covered = (where: typeof here) =>
          daysOf(series, where).reduce((all, { coveredMs }) => all + coveredMs, 0);
        expect(total(daysOf(series, here))).toBe(total(daysOf(series, there)));
        expect(covered(here)).toBe(covered(there));
      }),
    );
  });

  it("a day without a reading, and one that is not covered to its last minute, is never low", () => {
    fc.assert(
      fc.property(anySeries, anyZone, (series, where) => {
        const { days } = netDays(netDaysInput(series, { zone: where, now: nowAfter(series) }));
        for (const day of days) {
          const low = lowDay(day, { role: "collection", mode: "to bag", row: { lowNetMl: 1_000_000 } });
          if (day.net.kind === "missing" || day.coveredMs < day.to - day.from)
            expect(low.kind).toBe("cannot tell");
          else expect(low.kind).not.toBe("not low");
        }
      }),
    );
  });

  it("days follow one another without a hole from the first reading to now", () => {
    fc.assert(
      fc.property(anySeries, anyZone, (series, where) => {
        const { days } = netDays(netDaysInput(series, { zone: where, now: nowAfter(series) }));
        expect(days[0]!.from).toBeLessThanOrEqual(series[0]!.from as number);
        expect(days.at(-1)!.to).toBeGreaterThan(nowAfter(series));
        for (const [index, day] of days.slice(1).entries()) expect(day.from).toBe(days[index]!.to);
      }),
    );
  });
});
