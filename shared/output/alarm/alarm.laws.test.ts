import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Instant, instant } from "#shared/day/instant.ts";
import { microlitres } from "#shared/output/microlitre.ts";
import type { Reading } from "#shared/output/reading.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";
import { characters } from "#shared/tube/vocabulary.ts";
import { alarmInput, ran } from "#tests/factories/alarm-input.ts";
import { at } from "#tests/factories/reading.ts";
import { placed } from "#tests/support/factories.ts";
import { alarmReasons } from "./alarm-reasons.ts";

const HOUR = 3_600_000;
const start = at("2026-11-01T00:00Z");

const made = fc.record({
  gap: fc.constantFrom(0, 0, 0, 0, 5, 30),
  hours: fc.integer({ min: 1, max: 30 }),
  ml: fc.oneof({ weight: 2, arbitrary: fc.constant(0) }, { weight: 5, arbitrary: fc.nat({ max: 5000 }) }),
  seen: fc.subarray([...characters], { maxLength: 2 }),
  leak: fc.constantFrom("none", "damp", "soaking", "not recorded"),
  airLeak: fc.constantFrom("none", "present", "not recorded"),
  symptoms: fc.constantFrom<Reading["symptoms"]>("not recorded", [], ["cough"], ["breathlessness"]),
});

/** Readings in a row, in hours from 1 Nov 2026, with a gap between some. */
const anySeries = fc.array(made, { minLength: 1, maxLength: 24 }).map((all) => {
  let from = start as number;
  return all.map(({ gap, hours, ml, seen, ...more }, n): Reading => {
    from += gap * HOUR;
    const one = ran("2026-11-01T00:00", "2026-11-02T00:00", ml, {
      ...(more as Partial<Reading>),
      id: `r${n}`,
      from: instant(from),
      to: instant(from + hours * HOUR),
      characters: seen,
    });
    from += hours * HOUR;
    return one;
  });
});
const anyTube = fc.constantFrom(...tubeKinds).map((kind) => ({ entries: [placed({ kind })] }));

describe("laws of alarms", () => {
  it("the order of entry changes nothing", () => {
    const shuffled = anySeries.chain((all) =>
      fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length })),
    );
    fc.assert(
      fc.property(shuffled, anyTube, ([all, other], tube) => {
        expect(alarmReasons(alarmInput(other, tube))).toEqual(alarmReasons(alarmInput(all, tube)));
      }),
    );
  });

  it("a day without a reading over all of it is never low, high or a drop", () => {
    fc.assert(
      fc.property(anySeries, (all) => {
        const covers = (from: number, to: number) =>
          all.reduce(
            (sum, one) => sum + Math.max(0, Math.min(one.to, to) - Math.max(Number(one.from), from)),
            0,
          );
        for (const { code, args } of alarmReasons(alarmInput(all))) {
          if (code !== "low" && code !== "high" && code !== "sudden-drop") continue;
          const from = Date.parse(`${args.day}T00:00Z`);
          expect(covers(from, from + 24 * HOUR)).toBe(24 * HOUR);
        }
      }),
    );
  });

  it("splitting a reading changes no day that is low or high, and no hours that were dry", () => {
    const whole = ["low", "high"];
    fc.assert(
      fc.property(anySeries, fc.nat(), fc.integer({ min: 1, max: 59 }), (all, pick, minutes) => {
        const one = all[pick % all.length]!;
        const middle = instant(Number(one.from) + minutes * 60_000);
        const ml = one.gross.certainty === "unknown" ? 0 : one.gross.value;
        // The first part ends on what had run by then, and nearest to a day's limit a microlitre may be either side.
        const ran = Math.round((ml * (middle - Number(one.from))) / (one.to - Number(one.from)));
        const parts: Reading[] = [
          { ...one, id: `${one.id}a`, to: middle, gross: confirmed(microlitres(ran)) },
          { ...one, id: `${one.id}b`, from: middle, gross: confirmed(microlitres(ml - ran)) },
        ];
        const split = all.flatMap((reading) => (reading === one ? parts : [reading]));
        const told = (readings: readonly Reading[]) => {
          const reasons = alarmReasons(alarmInput(readings));
          const near = (rate: number, limit: number) => Math.abs(rate - limit) < 0.01;
          const days = reasons
            .filter(({ code, args }) => whole.includes(code) && !near(Number(args.mlPer24h), 100))
            .map(({ key }) => key);
          const dry = reasons.flatMap(({ code, args }) => (code === "dry" ? [args.minutes] : []));
          return { days, dry };
        };
        expect(told(split)).toEqual(told(all));
      }),
    );
  });

  it("one key stands for one reason, and answering what is told leaves nothing until more is logged", () => {
    fc.assert(
      fc.property(anySeries, anyTube, (all, tube) => {
        const reasons = alarmReasons(alarmInput(all, tube));
        expect(new Set(reasons.map(({ key }) => key)).size).toBe(reasons.length);
        const answered = reasons.map(({ key, at: until }): { key: string; until: Instant } => ({
          key,
          until,
        }));
        expect(alarmReasons(alarmInput(all, { ...tube, answered }))).toEqual([]);
      }),
    );
  });

  it("a tube that drains no organ gets no reason by volume a day, and one that is inside gets none of being dry", () => {
    const byVolume = ["dry", "low", "high", "sudden-drop"];
    fc.assert(
      fc.property(
        anySeries,
        fc.constantFrom("abscess drain", "chest tube", "ureteral stent"),
        (all, kind) => {
          const found = alarmReasons(alarmInput(all, { entries: [placed({ kind: kind as never })] }));
          expect(found.filter(({ code }) => byVolume.includes(code))).toEqual([]);
        },
      ),
    );
  });
});
