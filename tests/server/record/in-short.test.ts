import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromShort, inShort } from "#server/record/in-short.ts";
import { day } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import { fold } from "#shared/tube/fold.ts";
import type { PatientTubes } from "#shared/tube/state.ts";
import { anyHistory, anyLife } from "#tests/support/any-history.ts";

const any = fc.oneof(anyHistory, anyLife);
const far = zone("America/Denver");
const born = day("1960-01-01");

/** Of each story the first line, and no count of entries. */
const shortened = (state: PatientTubes): PatientTubes => ({
  ...state,
  tubes: state.tubes.map((tube) => ({ ...tube, story: tube.story.slice(0, 1) })),
  lastSeq: 0,
});

describe("a patient in short, of any history", () => {
  it("is the patient again when it is read", () => {
    fc.assert(
      fc.property(any, fc.constantFrom(born, null), fc.constantFrom(far, null), (events, bornOn, livesIn) => {
        const state = fold(events);
        const text = JSON.stringify(inShort(state, { bornOn, livesIn }));
        expect(fromShort(text)).toEqual({ bornOn, livesIn, state: shortened(state) });
      }),
    );
  });

  it("is read as well from a text that leaves nothing out", () => {
    fc.assert(
      fc.property(any, (events) => {
        const state = shortened(fold(events));
        const { lastSeq: _lastSeq, ...tubes } = state;
        expect(fromShort(JSON.stringify({ bornOn: born, tubes }))).toEqual({
          bornOn: born,
          livesIn: null,
          state,
        });
      }),
    );
  });
});
