import type { LengthUnit } from "#shared/size/length.ts";

/** Everything whose size is typed somewhere. */
export const sizedThings = [
  "tube outside",
  "needle outside",
  "wire",
  "takes",
  "bore",
  "bore tolerance",
  "tube length",
  "wire length",
  "external length",
] as const;
export type SizedThing = (typeof sizedThings)[number];

/**
 * The range in which an entry is believed, both ends included, and the units that tell this size. French and gauge are
 * outsides: they tell no inside, so a bore or a label in French is asked again.
 */
export type SizeRange = {
  readonly from: number;
  readonly to: number;
  readonly unit: LengthUnit;
  readonly units: readonly (LengthUnit | "G")[];
  /** The noun of the refusal: "8 F" does not tell {what}. */
  readonly what: string;
  readonly like: string;
};

/** Practice, no source: wide enough for what is made, narrow enough for a slipped decimal or a wrong unit. */
export const sizeRanges = {
  "tube outside": {
    from: 3,
    to: 40,
    unit: "F",
    units: ["F", "mm", "in"],
    what: "a tube's outside",
    like: "8 F or 2.7 mm",
  },
  "needle outside": {
    from: 0.2,
    to: 5,
    unit: "mm",
    units: ["G", "in", "mm"],
    what: "a needle's outside",
    like: "21 G or 0.8 mm",
  },
  wire: {
    from: 0.01,
    to: 0.052,
    unit: "in",
    units: ["in", "mm"],
    what: "a wire's size",
    like: "0.035 in or 0.889 mm",
  },
  takes: {
    from: 0.01,
    to: 0.052,
    unit: "in",
    units: ["in", "mm"],
    what: "what wire a tube takes",
    like: "0.035 in or 0.889 mm",
  },
  bore: { from: 0.2, to: 13, unit: "mm", units: ["mm", "in"], what: "an inside", like: "1.9 mm or 0.075 in" },
  "bore tolerance": {
    from: 0,
    to: 1,
    unit: "mm",
    units: ["mm", "in"],
    what: "a tolerance",
    like: "0.05 mm or 0.002 in",
  },
  "tube length": {
    from: 5,
    to: 150,
    unit: "cm",
    units: ["cm", "mm"],
    what: "a tube's length",
    like: "25 cm or 250 mm",
  },
  "wire length": {
    from: 30,
    to: 450,
    unit: "cm",
    units: ["cm", "mm"],
    what: "a wire's length",
    like: "145 cm",
  },
  "external length": {
    from: 0,
    to: 60,
    unit: "cm",
    units: ["cm", "mm"],
    what: "an external length",
    like: "12 cm or 120 mm",
  },
} as const satisfies Record<SizedThing, SizeRange>;

/** The same of a size of nothing in particular, by the unit that it is told in. Practice, no source. */
export const anySizeRanges = {
  F: { from: 0.5, to: 40, unit: "F" },
  in: { from: 0.004, to: 200, unit: "in" },
  mm: { from: 0.1, to: 5000, unit: "mm" },
  cm: { from: 0.1, to: 500, unit: "cm" },
} as const satisfies Record<LengthUnit, Pick<SizeRange, "from" | "to" | "unit">>;
