import fc from "fast-check";
import { expect, it } from "vitest";
import { lessSure, reach } from "#shared/fit/reach.ts";
import type { Length } from "#shared/size/length.ts";
import { type Certainty, certainties, confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { cm } from "#tests/factories/coaxial.ts";
import { estimated, reported } from "#tests/factories/tube-inside.ts";

it.each([
  [-1, "too short", 1],
  [0, "long enough", 0],
  [1, "long enough", 1],
])("%d units against what is round it: %s by %d", (units, verdict, by) => {
  const inner = confirmed((cm(25) + units) as Length);
  expect(reach(inner, confirmed(cm(25)))).toEqual({ verdict, by });
});

it("30 cm in 25 reach 5 out, 20 cm in 25 are 5 too short", () => {
  expect(reach(confirmed(cm(30)), confirmed(cm(25)))).toEqual({ verdict: "long enough", by: cm(5) });
  expect(reach(confirmed(cm(20)), confirmed(cm(25)))).toEqual({ verdict: "too short", by: cm(5) });
});

it("what is not confirmed is doubt, and says what the figures say", () => {
  expect(reach(reported(cm(30)), confirmed(cm(25)))).toEqual({
    verdict: "doubt",
    of: "long enough",
    by: cm(5),
    certainty: "reported",
  });
  expect(reach(confirmed(cm(20)), estimated(cm(25)))).toEqual({
    verdict: "doubt",
    of: "too short",
    by: cm(5),
    certainty: "estimated",
  });
});

it("names which length nobody knows", () => {
  const known = confirmed(cm(25));
  expect(reach(unknownFact, known)).toEqual({ verdict: "cannot tell", missing: ["inner"] });
  expect(reach(known, unknownFact)).toEqual({ verdict: "cannot tell", missing: ["outer"] });
  expect(reach(unknownFact, unknownFact)).toEqual({ verdict: "cannot tell", missing: ["inner", "outer"] });
});

it.each<[Certainty, Certainty, Certainty]>([
  ["confirmed", "confirmed", "confirmed"],
  ["confirmed", "reported", "reported"],
  ["reported", "estimated", "estimated"],
  ["estimated", "unknown", "unknown"],
])("the less sure of %s and %s is %s, in either order", (a, b, expected) => {
  expect([lessSure(a, b), lessSure(b, a)]).toEqual([expected, expected]);
});

it("law: the less sure is one of the two", () => {
  const some = fc.constantFrom(...certainties);
  fc.assert(fc.property(some, some, (a, b) => [a, b].includes(lessSure(a, b))));
});
