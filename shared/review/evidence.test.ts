import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ReadingEntry } from "#shared/output/reading-log.ts";
import { type Evidence, type EvidenceChange, evidenceChanges } from "#shared/review/evidence.ts";
import { at, gross, reading } from "#tests/factories/reading.ts";

const recorded = (id: string, seq: number, to = "2026-11-03T05:00Z"): ReadingEntry => ({
  act: "recorded",
  seq,
  reading: reading({ id, from: "since last emptying", to: at(to) }),
});
const replaced = (id: string, replaces: string, seq: number): ReadingEntry => ({
  act: "replaced",
  seq,
  replaces,
  reason: "misread",
  reading: reading({ id, gross: gross(250) }),
});
const voided = (id: string, replaces: string, seq: number): ReadingEntry => ({
  act: "voided",
  seq,
  id,
  replaces,
  reason: "another patient's",
});

const evidence = (...readings: string[]): Evidence => ({
  asOf: at("2026-11-04T12:00Z"),
  readings,
  said: [],
  protocol: 1,
});

function toldOf(change: EvidenceChange): string {
  switch (change.change) {
    case "corrected":
      return `${change.was.id} became ${change.now.id}`;
    case "taken out":
      return `${change.was.id} taken out`;
    case "added":
      return `${change.now.id} added`;
  }
}

const told = (changes: readonly EvidenceChange[]): string[] => changes.map(toldOf);

describe("hard case 33: a past entry corrected after a decision", () => {
  it("a correction is told with what was seen and what stands", () => {
    const changes = evidenceChanges(evidence("a", "b"), [
      recorded("a", 1),
      recorded("b", 2),
      replaced("c", "a", 3),
    ]);
    expect(told(changes)).toEqual(["a became c"]);
    expect(changes[0]).toMatchObject({ was: { gross: gross(25) }, now: { gross: gross(250) } });
  });

  it("a correction of a correction is told from what was seen then", () => {
    const log = [recorded("a", 1), replaced("b", "a", 2), replaced("c", "b", 3)];
    expect(told(evidenceChanges(evidence("b"), log))).toEqual(["b became c"]);
    expect(told(evidenceChanges(evidence("a"), log))).toEqual(["a became c"]);
  });

  it("one that was taken out is told, and one that was put back is no change", () => {
    const log = [recorded("a", 1), voided("v", "a", 2)];
    expect(told(evidenceChanges(evidence("a"), log))).toEqual(["a taken out"]);
    expect(told(evidenceChanges(evidence("a"), [...log, voided("w", "v", 3)]))).toEqual([]);
  });

  it("one that was written down late and speaks of before is told; one that came after is not", () => {
    const log = [
      recorded("a", 1),
      recorded("late", 2, "2026-11-04T12:00Z"),
      recorded("after", 3, "2026-11-04T12:01Z"),
    ];
    expect(told(evidenceChanges(evidence("a"), log))).toEqual(["late added"]);
  });

  it("nothing is told while what was seen stands, in whatever order it is read", () => {
    const log = [recorded("a", 1), recorded("b", 2), replaced("c", "b", 3)];
    fc.assert(
      fc.property(fc.shuffledSubarray(["a", "c"], { minLength: 2 }), (seen) => {
        expect(evidenceChanges(evidence(...seen), log)).toEqual([]);
      }),
    );
  });
});
