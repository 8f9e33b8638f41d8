import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { type ExchangePlan, exchangeAnswer, type PlanRows } from "#shared/fit/exchange-plan.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { cm, coaxial, F, mm } from "#tests/factories/coaxial.ts";
import { exchangePlan, planRows, planTube } from "#tests/factories/planned-exchange.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";
import { blank, inch, reported, takes } from "#tests/factories/tube-inside.ts";

const drain = (size: number | null, said: Partial<ShelfType> = {}): ShelfType =>
  shelfType({
    name: `Drain ${size}`,
    sort: "tube",
    outside: size === null ? unknownFact : confirmed(F(size)),
    ...said,
  });
const toCome = (size: number | null) => ({
  ...exchangePlan().toCome,
  outside: size === null ? unknownFact : confirmed(F(size)),
});
const readyFor = (shelf: readonly ShelfType[], plan: Partial<ExchangePlan> = {}, rows: PlanRows = planRows) =>
  exchangeAnswer(exchangePlan(plan), planTube(), { rows, shelf }).ready;

const beside = ({ below, above }: ReturnType<typeof readyFor>) =>
  [below, above].map(({ size, types }) => [size, types.map(({ name }) => name)]);

describe("8. the sizes next to the tube to come", () => {
  it("are those of the shelf, the nearest on each side, all of one size", () => {
    const shelf = [6, 7, 8, 8.5, 10, 7].map((size, index) => drain(size, { name: `${size} F, ${index}` }));
    expect(beside(readyFor(shelf))).toEqual([
      [F(7), ["7 F, 1", "7 F, 5"]],
      [F(8.5), ["8.5 F, 3"]],
    ]);
  });

  it("are those of the row where the shelf has none: 2 F below and above", () => {
    expect(beside(readyFor([drain(8)]))).toEqual([
      [F(6), []],
      [F(10), []],
    ]);
    expect(beside(readyFor([drain(12)], { toCome: toCome(10) }))).toEqual([
      [F(8), []],
      [F(12), ["Drain 12"]],
    ]);
  });

  it("are as far below and above as the row says of each", () => {
    const planning = planRows.planning && {
      ...planRows.planning,
      readyF: { below: 1, above: 3, source: "CP" },
    };
    expect(beside(readyFor([], {}, { ...planRows, planning }))).toEqual([
      [F(7), []],
      [F(11), []],
    ]);
  });

  it("are tubes for that kind or for any, and of a known size", () => {
    const shelf = [
      drain(7, { kinds: ["abscess drain"] }),
      drain(6.5, { kinds: ["abscess drain", "nephrostomy"] }),
      drain(6.6, { sort: "dilator" }),
      drain(9, { sort: "sheath" }),
      drain(null),
    ];
    expect(beside(readyFor(shelf))).toEqual([
      [F(6.5), ["Drain 6.5"]],
      [F(10), []],
    ]);
    expect(beside(readyFor(shelf, { kind: "abscess drain" }))[0]).toEqual([F(7), ["Drain 7"]]);
    expect(beside(readyFor([drain(7, { sort: "dilator" })]))[0]).toEqual([F(6), []]);
  });

  it("cannot be told of an unknown size, nor without the row", () => {
    const none = [
      [null, []],
      [null, []],
    ];
    expect(beside(readyFor([drain(7)], { toCome: toCome(null) }))).toEqual(none);
    const rows = { ...planRows, planning: null };
    expect(beside(readyFor([], {}, rows))).toEqual(none);
    const noReady = planRows.planning === null ? null : { ...planRows.planning, readyF: null };
    expect(beside(readyFor([], {}, { ...planRows, planning: noReady }))).toEqual(none);
  });
});

describe("8. wires of the shelf", () => {
  const wire = (size: number): ShelfType =>
    shelfType({ name: `Wire ${size}`, outside: confirmed(inch(size)) });
  const told = ({ wires }: ReturnType<typeof readyFor>) =>
    wires.map(({ type, verdict, through }) => `${type.name}: ${verdict}, ${through}`);

  it("are held against both tubes; other sorts are none", () => {
    const narrow = { ...toCome(8), inside: takes(0.035) };
    expect(told(readyFor([wire(0.038), drain(8), wire(0.035)], { toCome: narrow }))).toEqual([
      "Wire 0.035: passes, 0",
      "Wire 0.038: does not pass, 1",
    ]);
  });

  it("and against the stiffener, in which the wire lies", () => {
    const stiffener = coaxial("stiffener", { outside: F(5), inside: takes(0.018) });
    expect(told(readyFor([wire(0.035), wire(0.018)], { stiffener }))).toEqual([
      "Wire 0.018: passes, 0",
      "Wire 0.035: does not pass, 2",
    ]);
  });
});

describe("what a row may ask a reason for", () => {
  const all: Partial<ExchangePlan> = {
    // 0.038 in under a label of 0.038 in the old tube, 0.035 in the new one; 40 cm of wire where 20 + 10 + 25 + 10 are needed at least.
    wire: coaxial("wire", { outside: inch(0.038), length: cm(40) }),
    toCome: { ...toCome(14), inside: takes(0.035), length: confirmed(cm(25)) },
    on: day("2026-08-20"),
  };
  const doubts = (plan: Partial<ExchangePlan>, tube: Parameters<typeof planTube>[0] = {}) =>
    exchangeAnswer(exchangePlan(plan), planTube(tube), { rows: planRows, shelf: [] }).doubts;

  it("stands worst first, each once", () => {
    expect(doubts(all)).toEqual(["does not pass", "wire too short", "step over the note", "immature tract"]);
    expect(doubts(all, { inside: blank })).toEqual([
      "does not pass",
      "wire too short",
      "step over the note",
      "immature tract",
      "cannot tell",
    ]);
  });

  it("is nothing where all is known and in order", () => {
    expect(doubts({})).toEqual([]);
  });

  it("takes in the old tube, the new one and the sheath", () => {
    expect(doubts({}, { inside: takes(0.018) })).toEqual(["does not pass"]);
    expect(doubts({}, { inside: { ...blank, takes: reported(inch(0.038)) } })).toEqual(["doubt"]);
    expect(doubts({ toCome: { ...toCome(8), inside: blank } })).toEqual(["cannot tell"]);
    expect(doubts({ sheath: coaxial("sheath", { length: cm(20) }) })).toEqual(["cannot tell"]);
    const tight = {
      ...blank,
      bores: [{ place: "end hole" as const, inside: confirmed(mm(2)), tolerance: null }],
    };
    expect(doubts({ sheath: coaxial("sheath", { inside: tight, length: cm(20) }) })).toEqual([
      "does not pass",
    ]);
  });

  it("a second doubt of the same weight is not told twice", () => {
    expect(doubts({ toCome: { ...toCome(8), inside: blank } }, { inside: blank })).toEqual(["cannot tell"]);
  });
});
