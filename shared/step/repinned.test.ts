import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { fold } from "#shared/tube/fold.ts";
import { datesConfirmed, type Entry, placed } from "#tests/support/factories.ts";
import { books, history } from "#tests/support/told.ts";
import { movedSteps } from "./repinned.ts";

/**
 * Whom a later first call touches. By the example rows (common practice, no source) it is due on day 1 to 3; 14 August 2026 is a Friday, by any
 * calendar.
 */
const later: Protocol = {
  ...exampleProtocol,
  version: 2,
  firstCall: { ...exampleProtocol.firstCall, from: 4, to: 6 },
};
const of = books({ protocol: (version) => (version === 2 ? later : exampleProtocol) });
const newest = { protocol: 2, calendar: 1 };
const left = placed();
const right = placed({ tube: "tube-2", side: "right", on: "2026-08-15" });
const confirmed = (tube: string): Entry => datesConfirmed({ on: "2026-08-16", tube, pins: newest });

const calls = (...entries: readonly Entry[]) =>
  movedSteps(fold(history(...entries)), of, newest).map(({ tubeId, kind, stood, proposed }) => [
    tubeId,
    kind,
    stood?.target,
    proposed?.target,
  ]);

describe("another day for a call", () => {
  it("is proposed of the tube that asks for it", () => {
    expect(calls(left)).toEqual([["tube-1", "call", "2026-08-17", "2026-08-18"]]);
    expect(calls(left, confirmed("tube-1"))).toEqual([]);
  });

  it("is proposed of each tube where one call is for several, and once both are confirmed no more", () => {
    expect(calls(left, right)).toEqual([
      ["tube-1", "call", "2026-08-17", "2026-08-18"],
      ["tube-2", "call", "2026-08-17", "2026-08-18"],
    ]);
    expect(calls(left, right, confirmed("tube-1"))).toEqual([["tube-2", "call", "2026-08-17", "2026-08-18"]]);
    expect(calls(left, right, confirmed("tube-1"), confirmed("tube-2"))).toEqual([]);
  });
});
