import { describe, expect, it } from "vitest";
import { fold } from "#shared/tube/fold.ts";
import {
  amended,
  checked,
  died,
  type Entry,
  exchanged,
  placed,
  reconcileAsked,
  recordsJoined,
  voided,
} from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { following, joinsIn, numberedAnew, restsOnJoin, withJoined } from "./join.ts";

/** The record that stays: one tube, then the joining, which was recorded after the two entries of the other. */
const own = (...later: readonly Entry[]) => {
  const [first, join, ...rest] = history(
    placed({ on: "2026-08-03" }),
    recordsJoined({ id: "join", on: "2026-08-20", offset: 1, numbers: [{ tube: "tube-9", number: 2 }] }),
    ...later,
  );
  return [first!, { ...join!, seq: 4 }, ...rest.map((event, n) => ({ ...event, seq: 5 + n }))];
};
const theirs = history(
  placed({ id: "o1", tube: "tube-9", side: "right", on: "2026-08-04" }),
  checked({ id: "o2", tube: "tube-9", on: "2026-08-10" }),
);
const streamOf = () => theirs;
const join = { seq: 4 };

describe("records that are joined", () => {
  it("count as one, each entry once, in the order of recording; a tube whose number is taken has another", () => {
    const events = withJoined(own(), streamOf);
    expect(events.map(({ id, seq }) => [id, seq])).toEqual([
      ["e1", 1],
      ["o1", 2],
      ["o2", 3],
      ["join", 4],
    ]);
    const { tubes, lastSeq, contradictions } = fold(events);
    expect(tubes.map(({ id, number }) => [id, number])).toEqual([
      ["tube-1", 1],
      ["tube-9", 2],
    ]);
    expect([lastSeq, contradictions]).toEqual([4, []]);
  });

  it("are apart while the joining is voided", () => {
    const apart = own(voided("join"));
    expect(joinsIn(apart)).toEqual([]);
    expect(withJoined(apart, streamOf)).toEqual(apart);
  });

  it("settle that two records of one patient were to be reconciled, and nothing else", () => {
    const asked = history(
      reconcileAsked({ id: "o1", on: "2026-08-10", about: "two records of one patient" }),
      reconcileAsked({ id: "o2", on: "2026-08-10" }),
    );
    expect(fold(withJoined(own(), () => asked)).reconciles.map(({ about }) => about)).toEqual(["sides"]);
  });
});

describe("numbers of the joined record", () => {
  const numbered = (...numbers: number[]) => numbers.map((number) => ({ id: `tube-${number}`, number }));
  it.each([
    [[1], [2], []],
    [[1], [1], [["tube-1", 2]]],
    [
      [1, 2],
      [1, 2, 5],
      [
        ["tube-1", 6],
        ["tube-2", 7],
      ],
    ],
    [[], [1], []],
    [[3], [], []],
  ] as const)("here %j, there %j: anew %j", (here, there, anew) => {
    const found = numberedAnew(numbered(...here), numbered(...there));
    expect(found.map(({ tube, number }) => [tube, number])).toEqual(anew);
  });
});

describe("what rests on a joining", () => {
  const rests = (...later: readonly Entry[]) => restsOnJoin(own(...later), following(theirs, 1), join);

  it("nothing, when nothing was recorded since, or only of a tube that was always here", () => {
    expect(rests()).toEqual([]);
    expect(rests(exchanged({ on: "2026-08-21" }))).toEqual([]);
  });

  it.each([
    ["an entry of a tube of the other", exchanged({ tube: "tube-9", on: "2026-08-21" }), ["exchanged"]],
    ["an entry of the whole patient", died({ on: "2026-08-21" }), ["died"]],
    ["a correction of what the other says", amended("o2", checked({ on: "2026-08-11" })), ["amended"]],
    ["a voided entry of the other", voided("o2"), ["amended"]],
  ])("%s", (_name, later, kinds) => {
    expect(rests(later)).toEqual(kinds);
  });

  it("and no more once that is undone", () => {
    expect(rests(died({ id: "d", on: "2026-08-21" }), voided("d"))).toEqual([]);
    expect(rests({ ...voided("o2"), id: "v" }, voided("v"))).toEqual([]);
  });
});
