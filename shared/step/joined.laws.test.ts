import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { TubeEvent } from "#shared/tube/event.ts";
import { fold } from "#shared/tube/fold.ts";
import { following, numberedAnew, restsOnJoin, withJoined } from "#shared/tube/join.ts";
import { anyHistory, anyLife } from "#tests/support/any-history.ts";
import { recordsJoined, voided } from "#tests/support/factories.ts";
import { ownSteps } from "#tests/support/steps.ts";
import { books, history } from "#tests/support/told.ts";
import { openSteps } from "./open-steps.ts";

const any = fc.oneof(anyHistory, anyLife);

/** The same history of another record: its own tubes and entries. */
const ofAnother = (events: readonly TubeEvent[]): readonly TubeEvent[] =>
  JSON.parse(JSON.stringify(events).replaceAll(/"(tube-\d|e\d+)"/g, '"their $1"')) as TubeEvent[];

/** Two streams joined as the server does it, with what stands and what each was. */
const anyJoined = fc.tuple(any, any).map(([here, other]) => {
  const there = ofAnother(other);
  const offset = fold(here).lastSeq;
  const numbers = numberedAnew(fold(here).tubes, fold(there).tubes);
  const [join] = history(recordsJoined({ on: "2026-12-01", recordedOn: "2026-12-01", offset, numbers }));
  const own = [...here, { ...join!, id: "join", seq: offset + fold(there).lastSeq + 1 }];
  return { here, there, own, offset, joined: withJoined(own, () => there) };
});

describe("two records joined, of any history", () => {
  it("keep the promise: no record that has not ended without an open step, a day and an owner", () => {
    fc.assert(
      fc.property(anyJoined, ({ joined }) => {
        const patient = fold(joined);
        const steps = openSteps(patient, books());
        for (const tube of patient.tubes)
          expect(ownSteps(steps, tube).length > 0).toBe(tube.status !== "ended");
        for (const { dueOn, owner } of steps) {
          expect(dueOn).toMatch(/^\d{4}-\d\d-\d\d$/);
          expect(owner.role).toBeTruthy();
        }
        expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
        const odd = steps.filter(({ kind }) => kind === "contradiction");
        expect(odd).toHaveLength(patient.contradictions.length);
      }),
    );
  });

  it("hold every tube of both, and no place in the order of recording twice", () => {
    fc.assert(
      fc.property(anyJoined, ({ here, there, joined }) => {
        const ids = (events: readonly TubeEvent[]) => fold(events).tubes.map(({ id }) => id);
        expect(ids(joined).toSorted()).toEqual([...ids(here), ...ids(there)].toSorted());
        expect(new Set(joined.map(({ seq }) => seq)).size).toBe(joined.length);
      }),
    );
  });

  it("undone, are exactly what each was", () => {
    fc.assert(
      fc.property(anyJoined, ({ here, there, own, offset }) => {
        const last = own.at(-1)!;
        expect(restsOnJoin(own, following(there, offset), last)).toEqual([]);
        const [undo] = history(voided("join", { on: "2026-12-02", recordedOn: "2026-12-02" }));
        const parted = withJoined([...own, { ...undo!, id: "undo", seq: last.seq + 1 }], () => there);
        const { lastSeq: _before, ...stood } = fold(here);
        const { lastSeq: _after, ...stands } = fold(parted);
        expect(stands).toEqual(stood);
        expect(openSteps(fold(parted), books())).toEqual(openSteps(fold(here), books()));
      }),
    );
  });
});
