import { expect, it } from "vitest";
import { type StateConcern, stateConcerns, type TubeInside } from "#shared/fit/inside.ts";
import { wireOf } from "#shared/fit/passage.ts";
import { passageByState, wirePassage } from "#shared/fit/wire-passage.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { noRows } from "#tests/factories/tube-inside.ts";

const labelled: TubeInside = {
  takes: confirmed(lengthOf(0.035, "in")),
  bores: [],
  endHole: unknownFact,
};
const passage = {
  goes: wireOf(confirmed(lengthOf(0.035, "in"))),
  inside: labelled,
  rows: noRows,
};

it.each<[readonly StateConcern[]]>([
  [["crusted"]],
  [["hard to flush"]],
  [["past latest date"]],
  [stateConcerns],
])("case 35: labelled for 0.035 but %j: by size it passes, by state it is in doubt", (concerns) => {
  const { bySize, byState } = wirePassage(passage, concerns);
  expect(bySize.verdict).toBe("passes");
  expect(byState).toEqual({ state: "in doubt", concerns });
});

it("a state of which nothing is recorded, or nobody has spoken, is never in order", () => {
  expect(passageByState([])).toEqual({ state: "nothing recorded as present" });
  expect(passageByState(undefined)).toEqual({ state: "not recorded" });
});

it("names a concern once", () => {
  expect(passageByState(["crusted", "crusted"])).toEqual({ state: "in doubt", concerns: ["crusted"] });
});

it("the state changes nothing by size, and the size nothing by state", () => {
  const unknownWire = { ...passage, goes: wireOf(unknownFact) };
  expect(wirePassage(passage, ["crusted"]).bySize).toEqual(wirePassage(passage, []).bySize);
  expect(wirePassage(unknownWire, ["crusted"]).byState).toEqual(wirePassage(passage, ["crusted"]).byState);
});
