import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, type Day, day, type Weekday, weekdayOf } from "#shared/day/day.ts";
import { booking, openWeeks, room, slotQuestion } from "#tests/factories/visit.ts";
import { type Change, changed } from "./change.ts";
import { type Against, allAgainst, mayBook, type Slot } from "./may-book.ts";
import type { SlotQuestion } from "./offers.ts";
import type { Ability } from "./room.ts";

const START = day("2026-11-02");
const anyDay = fc.integer({ min: -3, max: 11 }).map((away) => addDays(START, away));
const anyWeekday = fc.integer({ min: 1, max: 7 }).map((weekday) => weekday as Weekday);

/** A clinic of one room, and a slot that may or may not be free in it. */
const anyAsked = fc
  .record({
    on: anyDay,
    from: fc.integer({ min: 80, max: 200 }).map((fives) => fives * 5),
    minutes: fc.constantFrom(15, 30, 90),
    roomId: fc.constantFrom("room-1", "room-1", "room-1", "room-9"),
    taken: fc.option(fc.tuple(fc.boolean(), anyDay, fc.constantFrom("08:00", "10:30", "13:00")), {
      nil: null,
    }),
    closed: fc.option(anyDay, { nil: null }),
    needs: fc.subarray<Ability>(["fluoroscopy", "CT"]),
    notOn: fc.option(fc.record({ weekday: anyWeekday, half: fc.constantFrom(null, "morning" as const) }), {
      nil: null,
    }),
    ready: fc.option(anyDay, { nil: null }),
  })
  .map(({ on, from, minutes, roomId, taken, closed, needs, notOn, ready }) => ({
    slot: { on, from, minutes, roomId } satisfies Slot,
    question: slotQuestion({
      asked: {
        minutes,
        needs,
        notOn: notOn === null ? [] : [notOn],
        readyFrom: ready === null ? null : { on: ready, at: 540 },
      },
      clinic: {
        rooms: [room()],
        calendar: {
          ...openWeeks,
          closures: closed === null ? [] : [{ from: closed, to: closed, reason: "audit" }],
        },
        booked:
          taken === null ? [] : [booking({ on: taken[0] ? on : taken[1], from: taken[2], minutes: 120 })],
        now: { on: START, at: 480 },
      },
    }),
  }));

/** The clinic, the patient or the slot with the one thing otherwise that a refusal names. */
function mended(
  slot: Slot,
  question: SlotQuestion,
  against: Against,
): { slot: Slot; question: SlotQuestion } {
  const { clinic } = question;
  const by = (change: Change) => ({ slot, question: changed(question, change) });
  switch (against.code) {
    case "past":
      return {
        slot,
        question: { ...question, clinic: { ...clinic, now: { on: addDays(slot.on, -1), at: 0 } } },
      };
    case "room-unknown":
      return { slot: { ...slot, roomId: "room-1" }, question };
    case "clinic-shut":
      return by({ code: "clinic-opens", on: slot.on, because: against.because });
    case "room-not-staffed": {
      const hours = { from: slot.from, to: slot.from + slot.minutes };
      return by({ code: "room-staffed", roomId: slot.roomId, weekday: weekdayOf(slot.on), hours });
    }
    case "room-cannot":
      return by({ code: "room-could", roomId: slot.roomId, lacks: against.lacks });
    case "room-taken":
      return {
        slot,
        question: against.by.reduce(
          (less, bookingId) => changed(less, { code: "visit-moves", bookingId, roomId: slot.roomId }),
          question,
        ),
      };
    case "patient-cannot":
      return by({ code: "patient-comes", weekday: against.weekday, half: against.half });
    case "not-ready":
      return by({ code: "ready-sooner", on: against.on, at: against.at });
  }
}

const codesOf = ({ asked, clinic }: SlotQuestion, slot: Slot) => allAgainst(slot, asked, clinic);

describe("what stands against a slot", () => {
  it("is each time one thing: with it otherwise that refusal is gone, and where it is the only one the slot may be booked", () => {
    const met = new Set<string>();
    fc.assert(
      fc.property(anyAsked, ({ slot, question }) => {
        const all = codesOf(question, slot);
        for (const against of all) {
          const next = mended(slot, question, against);
          const left = codesOf(next.question, next.slot);
          expect(left.map(({ code }) => code)).not.toContain(against.code);
          if (all.length > 1) continue;
          met.add(against.code);
          // A closed day or an unknown room hides what else there is about the room: that is told next.
          if (against.code === "clinic-shut" || against.code === "room-unknown") continue;
          expect(mayBook(next.slot, next.question.asked, next.question.clinic)).toBe(true);
        }
      }),
      // The seed is told, so that each of the codes is met by every run.
      { numRuns: 1000, seed: 20_261_130 },
    );
    for (const code of [
      "past",
      "room-not-staffed",
      "room-cannot",
      "room-taken",
      "patient-cannot",
      "not-ready",
    ])
      expect(met).toContain(code);
  });

  it.each([
    ["clinic-shut", { closures: [{ from: START as Day, to: START as Day, reason: "audit" }] }],
    ["room-unknown", {}],
  ])("a free slot behind %s alone may be booked once that is otherwise", (code, calendar) => {
    const slot = { on: START, from: 600, minutes: 30, roomId: code === "room-unknown" ? "room-9" : "room-1" };
    const question = slotQuestion({ clinic: { calendar: { ...openWeeks, ...calendar } } });
    const [against, ...more] = codesOf(question, slot);
    expect([against?.code, more]).toEqual([code, []]);
    const next = mended(slot, question, against!);
    expect(mayBook(next.slot, next.question.asked, next.question.clinic)).toBe(true);
  });
});
