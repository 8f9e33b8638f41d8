import { describe, expect, it } from "vitest";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import { exampleProtocol } from "./example.ts";
import { type Maturity, maturity, routeOf, tractAges } from "./tract-ages.ts";

/** The kind's first row of the example table; its days and their sources stand in shared/tube/kind. */
const agesOf = (kind: TubeKind, { route = null as string | null, slowToHeal = false } = {}) => {
  const row = exampleProtocol.intervals.find((each) => each.kind === kind)!;
  return tractAges(row, { route, slowToHeal });
};

describe("the ages of a tract", () => {
  it.each([
    ["transhepatic", 21],
    ["Transhepatic, through segment 5", 21],
    ["transperitoneal", 42],
    [null, 42],
    ["through the flank", 42],
    ["transhepatic or transperitoneal", 42],
  ])("of a cholecystostomy hang on the route: %j; an unknown one is the longer", (route, days) => {
    expect(agesOf("cholecystostomy", { route })).toMatchObject({
      immatureUnder: days,
      notRemovedBefore: days,
    });
  });

  it.each([
    "balloon gastrostomy",
    "loop gastrostomy",
    "bumper gastrostomy",
    "venting gastrostomy",
    "gastrojejunostomy",
  ] as const)("of a %s are 28 days, 42 if slow to heal; its removal age is 28 either way", (kind) => {
    expect(agesOf(kind)).toMatchObject({ immatureUnder: 28, notRemovedBefore: 28 });
    expect(agesOf(kind, { slowToHeal: true })).toMatchObject({ immatureUnder: 42, notRemovedBefore: 28 });
  });

  it.each([
    ["jejunostomy", 42, 42],
    ["cecostomy", 42, 42],
    ["external biliary drain", 28, 28],
    ["internal-external biliary drain", 28, 28],
    ["pancreatic drain", 21, null],
    ["nephrostomy", 14, null],
    ["tunnelled pleural catheter", 28, null],
    ["chest tube", null, null],
    ["conduit catheter", null, null],
    ["ureteral stent", null, null],
    ["other", null, null],
  ] as const)(
    "of a %s: immature under %s, not removed before %s; null is no row",
    (kind, immatureUnder, notRemovedBefore) => {
      expect(agesOf(kind, { slowToHeal: true })).toMatchObject({ immatureUnder, notRemovedBefore });
    },
  );

  it("of a suprapubic catheter: immature under 42, in hospital under 84", () => {
    expect(agesOf("suprapubic catheter")).toMatchObject({ immatureUnder: 42, inHospitalUnder: 84 });
  });
});

describe("maturity", () => {
  it.each<[TubeKind, number | null, Maturity]>([
    ["nephrostomy", 13, "immature"],
    ["nephrostomy", 14, "neither"],
    ["nephrostomy", 27, "neither"],
    ["nephrostomy", 28, "mature"],
    ["balloon gastrostomy", 27, "immature"],
    ["balloon gastrostomy", 28, "mature"],
    ["nephrostomy", null, "cannot tell"],
    ["chest tube", 100, "no row"],
    ["chest tube", null, "no row"],
  ])("of a %s at %s days: %s", (kind, age, answer) => {
    expect(maturity(agesOf(kind), age)).toBe(answer);
  });
});

it.each([
  ["transhepatic", "transhepatic"],
  [" TRANSPERITONEAL ", "transperitoneal"],
  ["", null],
  [null, null],
])("the route %j is %s", (text, route) => {
  expect(routeOf(text)).toBe(route);
});
