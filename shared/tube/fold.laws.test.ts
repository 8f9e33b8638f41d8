import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFacts, anyHistory, anyLife } from "#tests/support/any-history.ts";
import { voided } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import type { TubeEvent } from "./event.ts";
import { fold } from "./fold.ts";

const any = fc.oneof(anyHistory, anyLife);

/** The same entries recorded in another order: each keeps its id, its day and its sequence within the day. */
const recordedAs = (events: readonly TubeEvent[], order: readonly number[]): TubeEvent[] =>
  order.map((from, index) => ({ ...events[from]!, seq: index + 1 }));

const shuffled = <T>(list: readonly T[]) =>
  fc.shuffledSubarray([...list.keys()], { minLength: list.length, maxLength: list.length });

describe("fold, over any list of events", () => {
  it("is total: a state comes back, and each entry that cannot be true is in it", () => {
    fc.assert(
      fc.property(any, (events) => {
        const state = fold(events);
        expect(state.lastSeq).toBe(events.length);
        const ids = new Set(events.map(({ id }) => id));
        for (const { eventId } of state.contradictions) expect(ids).toContain(eventId);
      }),
    );
  });

  it("is total even where ids and places in the stream come twice", () => {
    const doubled = any.map((events) =>
      events.map((event, n) => ({ ...event, id: `e${n % 3}`, seq: n % 4 })),
    );
    fc.assert(fc.property(doubled, (events) => fold(events).lastSeq >= 0));
  });

  it("reads the list in any order alike", () => {
    fc.assert(
      fc.property(
        any.chain((events) => fc.tuple(fc.constant(events), shuffled(events))),
        ([events, order]) => {
          expect(fold(order.map((from) => events[from]!))).toEqual(fold(events));
        },
      ),
    );
  });

  it("gives equal facts the same state in whatever order they were recorded", () => {
    fc.assert(
      fc.property(
        fc.oneof(anyFacts, anyLife).chain((events) => fc.tuple(fc.constant(events), shuffled(events))),
        ([events, order]) => {
          expect(fold(recordedAs(events, order))).toEqual(fold(events));
        },
      ),
    );
  });

  it("gives a voided event's patient the state as if it had never been recorded", () => {
    fc.assert(
      fc.property(fc.oneof(anyFacts, anyLife), fc.nat(), (events, pick) => {
        fc.pre(events.length > 0);
        const wrong = events[pick % events.length]!;
        const [undo] = history(voided(wrong.id));
        const after = fold([...events, { ...undo!, id: "undo", seq: events.length + 1 }]);
        const never = fold(events.filter((event) => event !== wrong));
        expect({ ...after, lastSeq: 0 }).toEqual({ ...never, lastSeq: 0 });
      }),
    );
  });

  it("ends a tube with what ended it, and only then", () => {
    fc.assert(
      fc.property(any, (events) => {
        for (const { status, ending } of fold(events).tubes) {
          expect(ending !== null).toBe(status !== "in" && status !== "out, undecided");
        }
      }),
    );
  });

  it("has each clock of a tube start with an entry, the catheter's with one of the tube's own story", () => {
    fc.assert(
      fc.property(any, (events) => {
        const ids = new Set(events.map(({ id }) => id));
        for (const { catheter, tract, story } of fold(events).tubes) {
          expect(ids).toContain(tract.eventId);
          expect(story.map(({ eventId }) => eventId)).toContain(catheter.eventId);
        }
      }),
    );
  });
});
