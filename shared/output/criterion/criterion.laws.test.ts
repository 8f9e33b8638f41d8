import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, day } from "#shared/day/day.ts";
import { type Instant, instant, startOfDay, zone } from "#shared/day/instant.ts";
import { microlitres } from "#shared/output/microlitre.ts";
import type { Reading } from "#shared/output/reading.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { kindOf, type TubeKind, tubeKinds } from "#shared/tube/kind/kinds.ts";
import { criterionWhen, drain, state, utc } from "#tests/factories/criterion.ts";
import { reading } from "#tests/factories/reading.ts";
import * as make from "#tests/support/factories.ts";

const LAST = day("2026-11-15");
const noonAfter = (of: string): Instant => instant(startOfDay(day(of), utc) + 36 * 3_600_000);

/** What may be said of one day: measured, measured and in doubt, or nothing. Volumes in whole mL keep clear of the row by a microlitre. */
const anyDay = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: -20, max: 24 }).map((ml) => ({ ml, said: {} })) },
  { weight: 1, arbitrary: fc.constant(null) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(
        fc.integer({ min: 0, max: 24 }),
        fc.constantFrom<Partial<Reading>>(
          { leak: "damp" },
          { measuredBy: "estimate" },
          { flushGiven: "not recorded" },
        ),
      )
      .map(([ml, said]) => ({ ml, said })),
  },
);
const anyDays = fc.array(anyDay, { minLength: 1, maxLength: 8 });

type Told = readonly ({ readonly ml: number; readonly said: Partial<Reading> } | null)[];

/** Net volumes half a microlitre clear of any limit in whole mL cannot be: 1 mL less 500 uL is. */
const ul = (ml: number) => microlitres(ml * 1000 - 500);

function readingsOf(days: Told, last = LAST): Reading[] {
  return days.flatMap((told, n) => {
    if (told === null) return [];
    const from = startOfDay(addDays(last, n + 1 - days.length), utc);
    const to = startOfDay(addDays(last, n + 2 - days.length), utc);
    const basis = told.said.flushGiven === undefined ? "already net" : "gross";
    const value = basis === "gross" ? microlitres(Math.max(0, ul(told.ml))) : ul(told.ml);
    return [reading({ id: `day-${n}`, from, to, basis, gross: confirmed(value), zone: utc, ...told.said })];
  });
}

const anyEntries = fc.oneof(
  { weight: 4, arbitrary: fc.constant([drain(), state({})]) },
  {
    weight: 1,
    arbitrary: fc
      .integer({ min: 8, max: 15 })
      .map((date) => [
        drain(),
        make.upsized({ on: `2026-11-${String(date).padStart(2, "0")}`, size: make.F(12) }),
        state({}),
      ]),
  },
  { weight: 1, arbitrary: fc.constant([drain({ on: "2026-11-14" }), state({})]) },
);

const kindOn = (entries: readonly make.Entry[], readings: readonly Reading[], now = noonAfter(LAST)) =>
  criterionWhen({ entries, readings, now }).kind;

describe("laws of the criterion", () => {
  it("the order of entry changes nothing", () => {
    fc.assert(
      fc.property(anyEntries, anyDays, fc.nat(), (entries, days, turn) => {
        const readings = readingsOf(days);
        const turned = [...readings.slice(turn % 8), ...readings.slice(0, turn % 8)].toReversed();
        const asked = { entries, now: noonAfter(LAST) };
        expect(criterionWhen({ ...asked, readings: turned })).toEqual(criterionWhen({ ...asked, readings }));
      }),
    );
  });

  it("splitting a reading at any instant changes no verdict", () => {
    fc.assert(
      fc.property(
        anyEntries,
        anyDays,
        fc.nat(),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (entries, days, pick, part) => {
          const readings = readingsOf(days).filter(({ basis }) => basis === "already net");
          const one = readings[pick % Math.max(1, readings.length)];
          if (one === undefined || one.gross.certainty === "unknown" || typeof one.from !== "number") return;
          const middle = instant(Math.round(one.from + (one.to - one.from) * part));
          const first = microlitres(
            Math.round((one.gross.value * (middle - one.from)) / (one.to - one.from)),
          );
          const rest = microlitres(one.gross.value - first);
          const halves = [
            { ...one, id: "first", to: middle, gross: confirmed(first) },
            { ...one, id: "second", from: middle, gross: confirmed(rest) },
          ];
          const others = readings.filter(({ id }) => id !== one.id);
          expect(kindOn(entries, [...others, ...halves])).toBe(kindOn(entries, readings));
        },
      ),
    );
  });

  it("a missing day never counts as low: without any of its days, met is met no more", () => {
    fc.assert(
      fc.property(anyDays, (days) => {
        const readings = readingsOf(days);
        const criterion = criterionWhen({ readings, entries: [drain(), state({})], now: noonAfter(LAST) });
        if (criterion.kind !== "numeric part met") return;
        for (const [index, id] of criterion.evidence.readings.entries()) {
          const without = readings.filter((one) => one.id !== id);
          const then = criterionWhen({
            readings: without,
            entries: [drain(), state({})],
            now: noonAfter(LAST),
          });
          // It may be met still by the days before, never by the day that is gone.
          const gone = criterion.evidence.days[index]?.day;
          if (then.kind === "numeric part met")
            expect(then.evidence.days.map((one) => one.day)).not.toContain(gone);
        }
      }),
    );
  });

  const next = "2026-11-16";
  const later = noonAfter(next);
  const appended = (readings: readonly Reading[], ml: number) => [
    ...readings,
    ...readingsOf([{ ml, said: {} }], day(next)).map((one) => ({ ...one, id: "appended" })),
  ];
  const fresh = (entries: readonly make.Entry[]) => [...entries, state({}, "2026-11-17")];

  it("an appended low day that counts never turns met into anything else", () => {
    fc.assert(
      fc.property(anyEntries, anyDays, fc.integer({ min: -9, max: 10 }), (entries, days, ml) => {
        const readings = readingsOf(days);
        if (kindOn(entries, readings) !== "numeric part met") return;
        const last = criterionWhen({ entries, readings, now: noonAfter(LAST) }).evidence.days[0]?.day;
        // A day that is missing between makes the new one stand alone: then it cannot be told.
        const running = last === LAST;
        const then = kindOn(fresh(entries), appended(readings, ml), later);
        expect(then).not.toBe("not met");
        if (running) expect(then).toBe("numeric part met");
      }),
    );
  });

  it("an appended high day never turns not met into met", () => {
    fc.assert(
      fc.property(anyEntries, anyDays, fc.integer({ min: 11, max: 200 }), (entries, days, ml) => {
        const readings = readingsOf(days);
        expect(kindOn(fresh(entries), appended(readings, ml), later)).toBe("not met");
      }),
    );
  });

  it("what is not measured can turn no not met into met: every way to fill the gaps says so", () => {
    fc.assert(
      fc.property(anyEntries, anyDays, fc.boolean(), (entries, days, lowDays) => {
        const readings = readingsOf(days);
        if (kindOn(entries, readings) !== "not met") return;
        const filled = days.map((told) => told ?? { ml: lowDays ? 3 : 30, said: {} });
        expect(kindOn(entries, readingsOf(filled))).toBe("not met");
      }),
    );
  });

  const neverByVolume = tubeKinds.filter((kind) => {
    const { role } = kindOf(kind);
    return role !== null && !["collection", "air and fluid", "intermittent"].includes(role);
  });

  it("a tube that drains an organ never gets a criterion by volume", () => {
    fc.assert(
      fc.property(fc.constantFrom<TubeKind>(...neverByVolume), anyDays, (kind, days) => {
        expect(kindOn([drain({ kind }), state({})], readingsOf(days))).toBe("does not apply");
      }),
    );
  });

  it("in every zone the same readings give a verdict with a reason", () => {
    const zones = ["America/New_York", "America/Santiago", "Pacific/Kiritimati"].map(zone);
    fc.assert(
      fc.property(anyEntries, anyDays, fc.constantFrom(...zones), (entries, days, where) => {
        const criterion = criterionWhen({
          entries,
          readings: readingsOf(days),
          now: noonAfter(LAST),
          zone: where,
        });
        expect(criterion.because.length).toBeGreaterThan(0);
      }),
    );
  });
});
