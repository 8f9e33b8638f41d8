import fc from "fast-check";
import { expect, it } from "vitest";
import { type Chain, chainOf } from "#shared/fit/chain.ts";
import { type Coaxial, coaxialSorts } from "#shared/fit/coaxial.ts";
import type { Bore } from "#shared/fit/inside.ts";
import type { PassageRows } from "#shared/fit/passage.ts";
import { reach } from "#shared/fit/reach.ts";
import { whichPass } from "#shared/fit/which-pass.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";
import { someAllowance, someFact, someLength, somePassage } from "#tests/factories/tube-inside.ts";

/** From good to bad; what nobody can tell stands for itself. */
const bySize = ["passes", "doubt", "does not pass"];
const byLength = ["long enough", "doubt", "too short"];

const someInside = somePassage.map(({ inside }) => inside);
const someThing = (sorts: readonly Coaxial["sort"][]): fc.Arbitrary<Coaxial> =>
  fc.record({
    sort: fc.constantFrom(...sorts),
    name: fc.constantFrom("a", "b"),
    outside: someFact(someLength),
    tolerance: fc.option(someAllowance),
    inside: someInside,
    length: someFact(someLength),
  });
const someWire = someThing(["wire"]);
const someHollow = someThing(coaxialSorts.filter((sort) => sort !== "wire"));
const someRows: fc.Arbitrary<PassageRows> = somePassage.map(({ rows }) => rows);
const someThings = fc
  .tuple(fc.oneof(someWire, someHollow), fc.array(someHollow, { minLength: 1, maxLength: 4 }))
  .map(([first, rest]) => [first, ...rest]);

const sizeOf = (chain: Chain): string => chain.bySize?.verdict ?? "none";
const lengthOf = (chain: Chain): string => chain.byLength?.verdict ?? "none";

/** A verdict that is left as it was, or that nobody can tell any more. */
const sameOrUnknown = (before: string): readonly string[] => [before, "cannot tell"];

const withOuter = (things: readonly Coaxial[], at: number, change: (thing: Coaxial) => Coaxial): Coaxial[] =>
  things.map((thing, index) => (index === at ? change(thing) : thing));

it("a chain is as good as its worst pair, and each pair says what it says alone", () => {
  fc.assert(
    fc.property(someThings, someRows, (things, rows) => {
      const chain = chainOf(things, rows);
      const alone = things.slice(1).map((outer, index) => chainOf([things[index] ?? outer, outer], rows));
      expect(chain.pairs.map((pair) => pair.bySize)).toEqual(alone.map(({ pairs }) => pairs[0]?.bySize));
      const sizes = alone.map(sizeOf);
      const lengths = alone.map(lengthOf);
      const worst = (order: readonly string[], of: readonly string[]) =>
        [order[2], "cannot tell", order[1], order[0]].find((verdict) => of.includes(verdict ?? ""));
      expect(sizeOf(chain)).toBe(worst(bySize, sizes));
      expect(lengthOf(chain)).toBe(worst(byLength, lengths));
      expect(chain.bySize?.first).toBe(chain.pairs[sizes.indexOf(sizeOf(chain))]);
      expect(chain.byLength?.first).toBe(chain.pairs[lengths.indexOf(lengthOf(chain))]);
    }),
  );
});

it("one more thing around never makes a chain better", () => {
  const order = ["does not pass", "cannot tell", "doubt", "passes"];
  fc.assert(
    fc.property(someThings, someHollow, someRows, (things, more, rows) => {
      const [before, after] = [chainOf(things, rows), chainOf([...things, more], rows)].map(sizeOf);
      expect(order.indexOf(after ?? "")).toBeLessThanOrEqual(order.indexOf(before ?? ""));
    }),
  );
});

it("a thicker wire never passes a chain where a thinner does not, of equal certainty", () => {
  fc.assert(
    fc.property(someWire, fc.array(someHollow, { minLength: 1 }), someLength, (wire, around, more) => {
      const { outside } = wire;
      if (outside.certainty === "unknown") return;
      const thicker = { ...wire, outside: { ...outside, value: (outside.value + more) as Length } };
      const rows = { clearance: more, boreTolerance: more, outsideTolerance: { wire: more, device: more } };
      const [thin, thick] = [wire, thicker].map((each) => sizeOf(chainOf([each, ...around], rows)));
      if (thick === "passes") expect(thin).toBe("passes");
      if (thin === "does not pass") expect(thick).toBe("does not pass");
    }),
  );
});

it("a bore that becomes unknown in a chain without labels leaves its verdict or makes it cannot tell", () => {
  const noLabel = { takes: unknownFact, takesDevice: unknownFact };
  const unlabelled = (thing: Coaxial): Coaxial => ({ ...thing, inside: { ...thing.inside, ...noLabel } });
  const forgotten = (bores: readonly Bore[], at: number): readonly Bore[] =>
    bores.map((bore, index) => (index === at ? { ...bore, inside: unknownFact } : bore));
  fc.assert(
    fc.property(someThings, someRows, fc.nat(), fc.nat(), (drawn, rows, outer, which) => {
      const things = drawn.map(unlabelled);
      const at = 1 + (outer % (things.length - 1));
      const after = withOuter(things, at, (thing) => {
        const { bores } = thing.inside;
        return {
          ...thing,
          inside: { ...thing.inside, bores: forgotten(bores, which % (bores.length || 1)) },
        };
      });
      const [was, is] = [things, after].map((each) => sizeOf(chainOf(each, rows)));
      expect(sameOrUnknown(was ?? "")).toContain(is);
    }),
  );
});

it("a tolerance that is taken away in a chain, with no row to stand in, leaves its verdict or makes it cannot tell", () => {
  fc.assert(
    fc.property(someThings, someRows, fc.nat(), (things, drawn, outer) => {
      const rows = { ...drawn, boreTolerance: undefined };
      const at = 1 + (outer % (things.length - 1));
      const after = withOuter(things, at, (thing) => ({
        ...thing,
        inside: { ...thing.inside, bores: thing.inside.bores.map((bore) => ({ ...bore, tolerance: null })) },
      }));
      const [was, is] = [things, after].map((each) => sizeOf(chainOf(each, rows)));
      expect(sameOrUnknown(was ?? "")).toContain(is);
    }),
  );
});

it("a length that becomes unknown leaves the verdict by length or makes it cannot tell, and by size changes nothing", () => {
  fc.assert(
    fc.property(someThings, someRows, fc.nat(), (things, rows, seed) => {
      const after = withOuter(things, seed % things.length, (thing) => ({ ...thing, length: unknownFact }));
      const [was, is] = [chainOf(things, rows), chainOf(after, rows)];
      expect(sizeOf(is)).toBe(sizeOf(was));
      expect(sameOrUnknown(lengthOf(was))).toContain(lengthOf(is));
    }),
  );
});

it("narrower tolerances of every bore change nothing that passes, and nothing that does not but for what cannot be told", () => {
  fc.assert(
    fc.property(someThings, someRows, (things, rows) => {
      const after = things.map((thing) => ({
        ...thing,
        inside: {
          ...thing.inside,
          bores: thing.inside.bores.map((bore) => ({
            ...bore,
            tolerance: bore.tolerance === null ? null : (Math.floor(bore.tolerance / 2) as Length),
          })),
        },
      }));
      const [was, is] = [things, after].map((each) => sizeOf(chainOf(each, rows)));
      if (was === "passes" || was === "does not pass") expect(is).toBe(was);
      // What is missing stays missing; only a doubt behind it may have become a stop.
      if (was === "cannot tell") expect(["cannot tell", "does not pass"]).toContain(is);
    }),
  );
});

it("a longer one never fails to reach where a shorter is long enough", () => {
  const longer = (fact: Fact<Length>, by: Length): Fact<Length> =>
    fact.certainty === "unknown" ? fact : { ...fact, value: (fact.value + by) as Length };
  fc.assert(
    fc.property(someFact(someLength), someFact(someLength), someLength, (inner, outer, by) => {
      const [short, long] = [reach(inner, outer), reach(longer(inner, by), outer)];
      if (short.verdict === "long enough") expect(long.verdict).toBe("long enough");
      if (long.verdict === "too short") expect(short.verdict).toBe("too short");
    }),
  );
});

it("which of ours pass is what each says in a chain of one through each", () => {
  fc.assert(
    fc.property(
      fc.array(someWire),
      fc.array(someHollow, { minLength: 1 }),
      someRows,
      (wires, around, rows) => {
        const answers = whichPass(
          wires,
          around.map(({ inside }) => inside),
          rows,
        );
        expect(answers).toHaveLength(wires.length);
        for (const { type, verdict, through, bySize: said } of answers) {
          const alone = around.map((outer) => chainOf([type, outer], rows).pairs[0]?.bySize);
          expect(said).toEqual(alone[through]);
          if (verdict === "passes") for (const each of alone) expect(each?.verdict).toBe("passes");
          if (alone.some((each) => each?.verdict === "does not pass")) expect(verdict).toBe("does not pass");
        }
      },
    ),
  );
});
