import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Bore } from "#shared/fit/inside.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import type { Passage } from "#shared/fit/passage.ts";
import type { Length } from "#shared/size/length.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { someAllowance, someLength, somePassage } from "#tests/factories/tube-inside.ts";

const verdict = (of: Passage): string => passageBySize(of).verdict;

const withBore = (of: Passage, index: number, change: Partial<Bore>): Passage => ({
  ...of,
  inside: {
    ...of.inside,
    bores: of.inside.bores.map((each, at) => (at === index ? { ...each, ...change } : each)),
  },
});

const noLabel = { takes: unknownFact, takesDevice: unknownFact };
const bored = somePassage.filter((of) => of.inside.bores.length > 0);
const unlabelled = bored.map((of) => ({ ...of, inside: { ...of.inside, ...noLabel } }));
const pick = (of: Passage, seed: number): number => seed % of.inside.bores.length;

/** What the bore at that index says by itself, held against what goes through; undefined when it cannot be held. */
const saysAt = (of: Passage, index: number): string | undefined =>
  passageBySize({
    ...of,
    inside: { ...noLabel, bores: of.inside.bores.slice(index, index + 1), endHole: unknownFact },
  }).compared[0]?.says;

const order = ["passes", "doubt", "does not pass"];

describe("laws of a passage", () => {
  it("a thicker one never passes where a thinner does not, of equal certainty", () => {
    fc.assert(
      fc.property(somePassage, someLength, (thin, more) => {
        const { outside } = thin.goes;
        if (outside.certainty === "unknown") return;
        const thicker = { ...outside, value: (outside.value + more) as Length };
        const thick = { ...thin, goes: { ...thin.goes, outside: thicker } };
        if (verdict(thick) === "passes") expect(verdict(thin)).toBe("passes");
        if (verdict(thin) === "does not pass") expect(verdict(thick)).toBe("does not pass");
        const [before, after] = [order.indexOf(verdict(thin)), order.indexOf(verdict(thick))];
        if (before >= 0 && after >= 0) expect(after).toBeGreaterThanOrEqual(before);
      }),
    );
  });

  it("without a label, a dimension that becomes unknown leaves the verdict or makes it cannot tell", () => {
    fc.assert(
      fc.property(unlabelled, fc.nat(), (before, seed) => {
        const after = verdict(withBore(before, pick(before, seed), { inside: unknownFact }));
        expect([verdict(before), "cannot tell"]).toContain(after);
      }),
    );
  });

  it("of label and bores, both answering, the worse is shown", () => {
    fc.assert(
      fc.property(somePassage, (both) => {
        const labelOnly = verdict({ ...both, inside: { ...both.inside, bores: [] } });
        const boresOnly = verdict({ ...both, inside: { ...both.inside, ...noLabel } });
        if (labelOnly === "cannot tell" || boresOnly === "cannot tell") return;
        const worse = Math.max(order.indexOf(labelOnly), order.indexOf(boresOnly));
        expect(verdict(both)).toBe(order[worse]);
      }),
    );
  });

  it("a tolerance that is taken away, with no row to stand in, leaves the verdict or makes it cannot tell", () => {
    fc.assert(
      fc.property(bored, fc.nat(), (drawn, seed) => {
        const before = { ...drawn, rows: { ...drawn.rows, boreTolerance: undefined } };
        const after = verdict(withBore(before, pick(before, seed), { tolerance: null }));
        expect([verdict(before), "cannot tell"]).toContain(after);
      }),
    );
  });

  it("an outside's tolerance that is taken away, with no row to stand in, leaves the verdict or makes it cannot tell", () => {
    fc.assert(
      fc.property(bored, (drawn) => {
        const outsideTolerance = { wire: undefined, device: undefined };
        const before = { ...drawn, rows: { ...drawn.rows, outsideTolerance } };
        const after = verdict({ ...before, goes: { ...before.goes, tolerance: null } });
        expect([verdict(before), "cannot tell"]).toContain(after);
      }),
    );
  });

  it("a missing row leaves the verdict or makes it cannot tell", () => {
    fc.assert(
      fc.property(somePassage, fc.constantFrom("clearance", "boreTolerance"), (before, row) => {
        const after = verdict({ ...before, rows: { ...before.rows, [row]: undefined } });
        expect([verdict(before), "cannot tell"]).toContain(after);
      }),
    );
  });

  // Where something else is missing, the whole answer is cannot tell until the doubt becomes a stop.
  it("a narrower tolerance changes doubt only: of the place, and so of the whole", () => {
    fc.assert(
      fc.property(bored, fc.nat(), someAllowance, (before, seed, narrower) => {
        const index = pick(before, seed);
        const now = before.inside.bores[index]?.tolerance;
        if (now === null || now === undefined || narrower > now) return;
        const after = withBore(before, index, { tolerance: narrower });
        const alone = (of: Passage) => saysAt(of, index);
        if (alone(after) !== alone(before)) expect(alone(before)).toBe("doubt");
        if (verdict(after) === verdict(before) || verdict(before) === "doubt") return;
        expect([verdict(before), alone(before), verdict(after)]).toEqual([
          "cannot tell",
          "doubt",
          "does not pass",
        ]);
      }),
    );
  });

  it("a narrower tolerance of the outside changes doubt only", () => {
    fc.assert(
      fc.property(bored, fc.nat(), someAllowance, (before, seed, narrower) => {
        const { tolerance } = before.goes;
        if (tolerance === null || narrower > tolerance) return;
        const index = pick(before, seed);
        const after = { ...before, goes: { ...before.goes, tolerance: narrower } };
        if (saysAt(after, index) !== saysAt(before, index)) expect(saysAt(before, index)).toBe("doubt");
      }),
    );
  });

  it("the order of recording changes nothing", () => {
    fc.assert(
      fc.property(somePassage, (of) => {
        const turned = { ...of, inside: { ...of.inside, bores: of.inside.bores.toReversed() } };
        expect(verdict(turned)).toBe(verdict(of));
      }),
    );
  });

  it("nothing passes and nothing is stopped by what is not confirmed", () => {
    fc.assert(
      fc.property(somePassage, (of) => {
        const answer = passageBySize(of);
        if (answer.verdict !== "passes" && answer.verdict !== "does not pass") return;
        expect([of.goes.outside.certainty, answer.decides.certainty]).toEqual(["confirmed", "confirmed"]);
      }),
    );
  });

  it("an answer has every fact that it needs, and cannot tell names at least one that it lacks", () => {
    fc.assert(
      fc.property(somePassage, (of) => {
        const answer = passageBySize(of);
        if (answer.verdict === "cannot tell") expect(answer.missing.length).toBeGreaterThan(0);
        else expect(answer.compared).toContain(answer.decides);
      }),
    );
  });
});
