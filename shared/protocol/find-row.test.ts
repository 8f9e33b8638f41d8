import { describe, expect, it } from "vitest";
import type { Factor } from "#shared/tube/vocabulary.ts";
import { exampleProtocol } from "./example.ts";
import { findRow } from "./find-row.ts";
import type { ProtocolRow } from "./interval-row.ts";
import { type Protocol, protocolSchema } from "./protocol.ts";
import { sources } from "./sources.ts";

const adult = { kind: "nephrostomy", factors: [] as Factor[], under18: false, firstCatheter: true } as const;
const found = (protocol: Protocol, factors: Factor[]) => {
  const answer = findRow(protocol, { ...adult, factors });
  return answer.found === "row" ? answer.row.id : answer.found;
};

/** The example with other days in some rows of the nephrostomy. */
const changed = (change: (row: ProtocolRow) => Partial<ProtocolRow>): Protocol => ({
  ...exampleProtocol,
  intervals: exampleProtocol.intervals.map((row) => ({ ...row, ...change(row) })),
});

describe("the row of a tube", () => {
  it.each([
    [[], "nephrostomy"],
    [["cancer obstruction"], "nephrostomy, cancer obstruction"],
    [["pregnancy"], "nephrostomy, pregnancy"],
    [["stone former"], "nephrostomy, stone former"],
    [["cancer obstruction", "stone former"], "nephrostomy, stone former"],
    [["stone former", "pregnancy"], "nephrostomy, pregnancy"],
    [["pregnancy", "stone former", "cancer obstruction"], "nephrostomy, pregnancy"],
  ] as [Factor[], string][])("for %j is the shortest that applies: %s", (factors, id) => {
    expect(found(exampleProtocol, factors)).toBe(id);
  });

  it.each([
    ["a day below", 89, "nephrostomy, stone former"],
    ["a day above", 91, "nephrostomy"],
  ])("a factor's row %s the kind's own 90", (_name, latest, id) => {
    const longer = changed((row) => (row.factor === "stone former" ? { latest } : {}));
    expect(found(longer, ["stone former"])).toBe(id);
  });

  it("without a latest date is measured by its target, and without either is the longest", () => {
    const bare = changed((row) => (row.factor === "stone former" ? { latest: null, target: 42 } : {}));
    expect(found(bare, ["stone former"])).toBe("nephrostomy, stone former");
    const none = changed((row) => (row.factor === "stone former" ? { latest: null, target: null } : {}));
    expect(found(none, ["stone former"])).toBe("nephrostomy");
  });

  it("is none where the table has none", () => {
    expect(findRow({ ...exampleProtocol, intervals: [] }, adult)).toEqual({ found: "no row" });
  });

  it("is none for a child, whatever the table says", () => {
    const child = { ...adult, under18: true };
    expect(findRow(exampleProtocol, child)).toEqual({ found: "no example for a child" });
  });

  it.each([
    [true, "suprapubic catheter, first exchange"],
    [false, "suprapubic catheter, then"],
  ])("of a suprapubic catheter hangs on whether it is the first of its tract: %s", (firstCatheter, id) => {
    const answer = findRow(exampleProtocol, { ...adult, kind: "suprapubic catheter", firstCatheter });
    expect(answer).toMatchObject({ found: "row", row: { id } });
  });

  it("of a kind that lacks a row for the factor is the kind's own", () => {
    const stent = findRow(exampleProtocol, { ...adult, kind: "ureteral stent", factors: ["stone former"] });
    expect(stent).toMatchObject({ found: "row", row: { id: "ureteral stent" } });
  });
});

describe("the example table", () => {
  it("reads by its own schema, approved by nobody", () => {
    expect(protocolSchema.parse(exampleProtocol)).toEqual(exampleProtocol);
    expect(exampleProtocol.approved).toBeNull();
  });

  it.each(exampleProtocol.intervals)(
    "$id: the target lies inside the window",
    ({ earliest, target, latest }) => {
      const days = [earliest, target, latest].filter((day) => day !== null);
      expect(days).toEqual(days.toSorted((a, b) => a - b));
    },
  );

  it.each(exampleProtocol.intervals)("$id: its source is in the list of sources", ({ source }) => {
    const marks = source.match(/\d+|CP|MEM/g) ?? [];
    expect(marks).not.toEqual([]);
    expect(marks.filter((mark) => !(mark in sources))).toEqual([]);
  });
});
