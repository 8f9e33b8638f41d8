import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayHalves, isOpen } from "#shared/day/clinic-days.ts";
import { addDays, type Day, day, type Weekday, weekdayOf } from "#shared/day/day.ts";
import { room, slotQuestion } from "#tests/factories/visit.ts";
import { changed } from "./change.ts";
import { allAgainst, mayBook, type Slot } from "./may-book.ts";
import {
  bestOfDay,
  bestSlots,
  compareRanks,
  daysAhead,
  NOTICE,
  type SlotQuestion,
  slotRank,
} from "./offers.ts";
import { type Ability, type Booking, halfOf, type Room } from "./room.ts";
import { offers } from "./sooner.ts";
import { GRID } from "./still-free.ts";

const START = day("2026-11-02");
const anyWeekday = fc.integer({ min: 1, max: 7 }).map((weekday) => weekday as Weekday);
const anyDay = fc.integer({ min: 0, max: 12 }).map((away) => addDays(START, away));
const quarters = (min: number, max: number) => fc.integer({ min, max }).map((quarter) => quarter * 15);

const anyRoom = (id: string): fc.Arbitrary<Room> =>
  fc
    .record({
      can: fc.subarray<Ability>(["fluoroscopy", "ultrasound", "CT"]),
      weekdays: fc.uniqueArray(anyWeekday, { minLength: 1 }),
      from: quarters(28, 50),
      length: quarters(2, 24),
      reserve: fc.constantFrom(0, 30, 60),
    })
    .map(({ can, weekdays, from, length, reserve }) =>
      room({ id, can, reserve, hours: weekdays.map((weekday) => ({ weekday, from, to: from + length })) }),
    );

const anyBooking: fc.Arbitrary<Booking> = fc
  .record({
    roomId: fc.constantFrom("room-1", "room-2"),
    on: anyDay,
    from: quarters(28, 70),
    minutes: fc.constantFrom(20, 45, 120),
  })
  .map((one) => ({ ...one, id: `${one.roomId} ${one.on} ${one.from} ${one.minutes}` }));

const anyQuestion: fc.Arbitrary<SlotQuestion> = fc
  .record({
    rooms: fc.tuple(anyRoom("room-1"), anyRoom("room-2")),
    booked: fc.array(anyBooking, { maxLength: 12 }),
    closed: fc.option(fc.tuple(anyDay, fc.integer({ min: 0, max: 4 })), { nil: null }),
    halved: fc.option(fc.tuple(anyDay, fc.constantFrom(...dayHalves)), { nil: null }),
    openWeekdays: fc.uniqueArray(anyWeekday, { minLength: 2 }),
    at: fc.integer({ min: 0, max: 1000 }),
    minutes: fc.constantFrom(15, 30, 90),
    needs: fc.subarray<Ability>(["fluoroscopy", "CT"]),
    notOn: fc.array(fc.record({ weekday: anyWeekday, half: fc.constantFrom(null, ...dayHalves) }), {
      maxLength: 2,
    }),
    ready: fc.option(fc.record({ on: anyDay, at: quarters(30, 60) }), { nil: null }),
    window: fc.tuple(fc.option(anyDay), fc.option(anyDay), fc.option(anyDay)),
    urgent: fc.boolean(),
  })
  .map((of) => {
    const [earliest, target, latest] = of.window.filter((on): on is Day => on !== null).toSorted();
    const closures =
      of.closed === null ? [] : [{ from: of.closed[0], to: addDays(...of.closed), reason: "audit" }];
    const halfDays = of.halved === null ? [] : [{ on: of.halved[0], open: of.halved[1], reason: "audit" }];
    return slotQuestion({
      days: 12,
      urgent: of.urgent,
      window: {
        earliest: earliest ?? null,
        target: target ?? null,
        latest: latest ?? null,
        latestOf: null,
        early: [],
      },
      clinic: {
        rooms: of.rooms,
        booked: of.booked,
        calendar: { version: 1, openWeekdays: of.openWeekdays, closures, halfDays },
        now: { on: START, at: of.at },
      },
      asked: { minutes: of.minutes, needs: of.needs, notOn: of.notOn, readyFrom: of.ready },
    });
  });

/** Every slot on the grid, one after the other, that nothing stands against. */
const everySlot = (question: SlotQuestion): Slot[] =>
  daysAhead(question).flatMap((on) =>
    question.clinic.rooms.flatMap(({ id: roomId }) =>
      Array.from({ length: 1440 / GRID }, (_, n) => ({
        roomId,
        on,
        from: n * GRID,
        minutes: question.asked.minutes,
      })).filter((slot) => isAheadEnough(slot, question) && mayBook(slot, question.asked, question.clinic)),
    ),
  );

const isAheadEnough = ({ on, from }: Slot, { clinic: { now } }: SlotQuestion): boolean =>
  on > now.on || from >= now.at + NOTICE;

/** The stated rule without a short way: all slots by rank, the first of each half of a day, three of them. */
function threeByHand(question: SlotQuestion): Slot[] {
  const ranked = everySlot(question)
    .map((slot) => ({ slot, rank: slotRank(slot, question) }))
    .toSorted((a, b) => compareRanks(a.rank, b.rank));
  const seen = new Set<string>();
  const first = ranked.filter(({ slot }) => {
    const half = `${slot.on} ${halfOf(slot.from)}`;
    const isNew = !seen.has(half);
    seen.add(half);
    return isNew;
  });
  return first.slice(0, 3).map(({ slot }) => slot);
}

describe("the three slots, of any clinic", () => {
  it("are the best of all free slots by the stated rule: an exhaustive search finds no other", () => {
    fc.assert(
      fc.property(anyQuestion, (question) => {
        expect(bestSlots(question).map(({ slot }) => slot)).toEqual(threeByHand(question));
      }),
    );
    // Every slot of twelve days is tried: how fast a machine is, no test asks.
  }, 60_000);

  it("break no closure, no other visit, no need and no hours", () => {
    fc.assert(
      fc.property(anyQuestion, (question) => {
        const { calendar, rooms, booked } = question.clinic;
        for (const { slot } of offers(question)) {
          const { on, from, minutes, roomId } = slot;
          const own = rooms.find(({ id }) => id === roomId);
          expect(isOpen(on, calendar)).toBe(true);
          expect(question.asked.needs.every((need) => own?.can.includes(need))).toBe(true);
          const hours = own?.hours.filter(({ weekday }) => weekday === weekdayOf(on)) ?? [];
          expect(hours.some((span) => span.from <= from && from + minutes <= span.to)).toBe(true);
          for (const other of booked)
            if (other.on === on && other.roomId === roomId)
              expect(other.from + other.minutes <= from || from + minutes <= other.from).toBe(true);
        }
      }),
    );
  });

  it("do not depend on the order in which visits were booked", () => {
    fc.assert(
      fc.property(anyQuestion, (question) => {
        const booked = question.clinic.booked.toReversed();
        const other = { ...question, clinic: { ...question.clinic, booked } };
        expect(bestSlots(other)).toEqual(bestSlots(question));
      }),
    );
  });

  it("each answer to why not sooner holds: the day has none, and with the one change it has", () => {
    let blocked = 0;
    fc.assert(
      fc.property(anyQuestion, (question) => {
        for (const { slot, sooner } of offers(question)) {
          if (sooner.kind === "blocked") {
            blocked += 1;
            expect(sooner.on < slot.on).toBe(true);
            expect(bestOfDay(sooner.on, question)).toEqual([]);
            const next = changed(question, sooner.change);
            const [found] = bestOfDay(sooner.on, next);
            expect(found && allAgainst(found.slot, next.asked, next.clinic)).toEqual([]);
          }
          if (sooner.kind === "free") expect(sooner.slot.on < slot.on).toBe(true);
          if (sooner.kind === "first day") expect(slot.on).toBe(question.clinic.now.on);
        }
      }),
      { numRuns: 300 },
    );
    expect(blocked).toBeGreaterThan(20);
  });
});
