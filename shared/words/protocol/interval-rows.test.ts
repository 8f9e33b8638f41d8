import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { intervalRowSchema, type ProtocolRow } from "#shared/protocol/interval-row.ts";
import { intervalWords } from "./interval-rows.ts";

/** Something else in every place of a row: a line that stays the same would keep that place from being read. */
const otherwise = {
  kind: ({ kind }) => (kind === "nephrostomy" ? "abscess drain" : "nephrostomy"),
  id: ({ id }) => `${id} or other`,
  factor: ({ factor }) => (factor === "pregnancy" ? null : "pregnancy"),
  turn: ({ turn }) => (turn === "first" ? "later" : "first"),
  asks: ({ asks }) => (asks === "review" ? "exchange" : "review"),
  note: () => "another note",
  earliest: () => 1524,
  target: () => 1524,
  latest: () => 1524,
  hardLatest: () => 1524,
  notExchangedBefore: () => 1524,
  immatureUnder: () => 1524,
  immatureIfSlowUnder: () => 1524,
  matureFrom: () => 1524,
  inHospitalUnder: () => 1524,
  notRemovedBefore: () => 1524,
  byRoute: () => [{ route: "transhepatic", immatureUnder: 1524, notRemovedBefore: 1525 }],
  source: () => "another source",
} as const satisfies { readonly [K in keyof ProtocolRow]: (row: ProtocolRow) => ProtocolRow[K] };

const places = Object.keys(intervalRowSchema.shape) as (keyof ProtocolRow)[];

describe("a row of intervals in words", () => {
  it("has a place to try for every field that a row has", () => {
    expect(Object.keys(otherwise).toSorted()).toEqual(places.toSorted());
  });

  it.each(places)("tells %s", (place) => {
    for (const row of exampleProtocol.intervals)
      expect(intervalWords({ ...row, [place]: otherwise[place](row) }), row.id).not.toEqual(
        intervalWords(row),
      );
  });

  it("tells each age of a way by itself", () => {
    const row = exampleProtocol.intervals.find(({ id }) => id === "cholecystostomy");
    if (row === undefined) throw new Error("the example has the row");
    expect(intervalWords(row)).toMatchObject({
      immature: "21 transhepatic, 42 transperitoneal",
      notRemoved: "21 transhepatic, 42 transperitoneal",
    });
    expect(intervalWords({ ...row, immatureUnder: 60 }).immature).toBe(
      "21 transhepatic, 42 transperitoneal, else 60",
    );
  });

  it("says what the example table says of a suprapubic catheter, a nephrostomy and a gastrostomy", () => {
    const said = (id: string) => {
      const row = exampleProtocol.intervals.find((one) => one.id === id);
      return row === undefined ? null : intervalWords(row);
    };
    expect(said("suprapubic catheter, first exchange")?.further).toContain("not exchanged under 14");
    expect(said("suprapubic catheter, first exchange")?.further).toContain("in hospital under 84");
    expect(said("nephrostomy")?.further).toBe("mature from 28");
    expect(said("balloon gastrostomy")?.immature).toBe("28, 42 if slow to heal");
    expect(said("plastic biliary stent")?.earliest).toBe("no row");
  });
});
