import { describe, expect, it } from "vitest";
import { inventedShelf } from "#seed-demo/shelf.ts";
import { stockShelf } from "#seed-demo/stock-shelf.ts";
import { now, today } from "#server/clock.ts";
import { viewShelf } from "#server/shelf/view-shelf.ts";
import { type CoaxialSort, coaxialSorts } from "#shared/fit/coaxial.ts";
import { known } from "#shared/tube/certainty.ts";
import { testDatabase } from "#tests/support/database.ts";

function stocked() {
  using db = testDatabase({ isDemo: true });
  const before = now(db);
  stockShelf({ db, startDay: today(db) });
  return { types: viewShelf(db).types, before, after: now(db) };
}

describe("the invented shelf", () => {
  const { types, before, after } = stocked();

  it("is put up by the form, every type of it, and leaves the clock right", () => {
    expect(types.map(({ name }) => name).toSorted()).toEqual(
      inventedShelf.map(({ name }) => name).toSorted(),
    );
    expect(Math.abs(after - before)).toBeLessThan(60_000);
    for (const { updatedAt } of types) expect(updatedAt).toBeLessThan(before);
  });

  it("has some of every sort, and some tubes with a shaft wider than their end hole", () => {
    const of = (sort: CoaxialSort) => types.filter((type) => type.sort === sort).length;
    expect(Object.fromEntries(coaxialSorts.map((sort) => [sort, of(sort)]))).toEqual({
      wire: 11,
      needle: 4,
      stiffener: 1,
      dilator: 8,
      tube: 10,
      sheath: 3,
      extension: 1,
    });
    const tapered = types.filter(({ bores }) => {
      const at = (place: string) =>
        known(bores.find((bore) => bore.place === place)?.inside ?? { certainty: "unknown" });
      return (at("shaft") ?? 0) > (at("end hole") ?? Number.POSITIVE_INFINITY);
    });
    expect(tapered.length).toBeGreaterThanOrEqual(2);
  });
});
