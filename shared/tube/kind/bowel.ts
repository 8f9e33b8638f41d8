import { type KindDefinition, row } from "./define.ts";

/**
 * Kinds that vent or irrigate. Figures are examples for adults; see urinary.ts for how sources are marked.
 */
export const bowelKinds = {
  "venting gastrostomy": {
    name: "venting gastrostomy",
    shortForms: [
      "venting g",
      "vent g",
      "venting g tube",
      "venting peg",
      "vent peg",
      "decompression gastrostomy",
    ],
    role: "venting",
    mode: "to bag",
    organ: "stomach",
    sided: false,
    usualFrench: [14, 24],
    retention: null,
    outside: true,
    expectedFluid: ["food", "bilious", "clear"],
    flush: { order: "30 mL water before and after, each port", source: "CP" },
    ifOut: "stomach or bowel",
    output: null,
    tip: null,
    rows: [
      row({
        id: "venting gastrostomy",
        asks: "exchange",
        earliest: 90,
        target: 120,
        latest: 180,
        immatureUnder: 28,
        immatureIfSlowUnder: 42,
        notRemovedBefore: 28,
        source: "CP",
      }),
    ],
  },
  cecostomy: {
    name: "cecostomy",
    shortForms: ["cecostomy tube", "caecostomy", "cecostomy button"],
    role: "irrigation access",
    mode: "to irrigate",
    organ: "cecum",
    sided: false,
    usualFrench: [8, 12],
    retention: "loop",
    outside: true,
    expectedFluid: ["feculent"],
    flush: { order: "irrigation as ordered", source: "CP" },
    ifOut: null,
    output: null,
    tip: null,
    rows: [
      row({
        id: "cecostomy",
        asks: "exchange",
        earliest: 180,
        target: 300,
        latest: 365,
        immatureUnder: 42,
        notRemovedBefore: 42,
        source: "CP",
      }),
    ],
  },
} as const satisfies Record<string, KindDefinition>;
