import { type KindDefinition, row } from "./define.ts";

/**
 * Kinds that lie wholly inside: no output, no outside part, only a date. Figures are examples for adults; see urinary.ts for how
 * sources are marked.
 */
export const stentKinds = {
  "ureteral stent": {
    name: "ureteral stent",
    shortForms: ["jj", "double j", "dj", "double-loop stent", "stent", "jj stent", "double-j"],
    role: "internal",
    mode: "internal",
    organ: "ureter",
    sided: true,
    usualFrench: [6, 8],
    retention: "two loops",
    outside: false,
    expectedFluid: [],
    flush: null,
    ifOut: null,
    output: null,
    tip: null,
    rows: [
      row({
        id: "ureteral stent",
        asks: "operator's date",
        latest: 90,
        hardLatest: 180,
        source: "10; rest CP",
      }),
      row({
        id: "ureteral stent, pregnancy",
        factor: "pregnancy",
        asks: "exchange",
        earliest: 21,
        target: 28,
        latest: 56,
        source: "CP",
      }),
    ],
  },
  "metal ureteral stent": {
    name: "metal ureteral stent",
    shortForms: ["metal stent", "metallic stent", "metal jj"],
    role: "internal",
    mode: "internal",
    organ: "ureter",
    sided: true,
    usualFrench: [6, 6],
    retention: "two loops",
    outside: false,
    expectedFluid: [],
    flush: null,
    ifOut: null,
    output: null,
    tip: null,
    rows: [
      row({
        id: "ureteral stent, metal",
        asks: "exchange",
        earliest: 300,
        target: 335,
        latest: 365,
        source: "MEM",
      }),
    ],
  },
  "plastic biliary stent": {
    name: "plastic biliary stent",
    shortForms: ["biliary stent", "plastic stent", "bile duct stent"],
    role: "internal",
    mode: "internal",
    organ: "bile duct",
    sided: false,
    usualFrench: [7, 10],
    retention: "flaps",
    outside: false,
    expectedFluid: [],
    flush: null,
    ifOut: null,
    output: null,
    tip: null,
    rows: [
      row({
        id: "plastic biliary stent",
        asks: "operator's date",
        latest: 120,
        source: "CP",
      }),
    ],
  },
} as const satisfies Record<string, KindDefinition>;
