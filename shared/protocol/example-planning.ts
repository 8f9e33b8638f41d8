import { exampleRoom } from "#shared/protocol/example-visits.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";

const GUIDELINE = "14";

/** Classes of a guideline, shown for discussion. */
export const exampleBleeding: Protocol["bleeding"] = {
  rows: [
    {
      class: "low",
      acts: [{ act: "exchange of a gastrostomy, biliary, nephrostomy or abscess tube", source: GUIDELINE }],
      inrAtMost: { from: 2, to: 3 },
      plateletsAtLeast: 20,
      labs: "no routine labs unless on warfarin or heparin or with a bleeding history",
      source: GUIDELINE,
    },
    {
      class: "high",
      acts: [
        { act: "new biliary, nephrostomy or gastrostomy access", source: GUIDELINE },
        { act: "cholecystostomy", source: "MEM" },
        { act: "deep abscess drain", source: GUIDELINE },
      ],
      inrAtMost: { from: 1.5, to: 1.8 },
      plateletsAtLeast: 50,
      labs: null,
      source: GUIDELINE,
    },
  ],
  liver: "liver disease has other thresholds",
  accessAtRisk: "who agreed the plan?",
  source: GUIDELINE,
};

/** Planning of the example table. */
export const examplePlanning: Protocol["planning"] = {
  room: exampleRoom,
  upsize: { usualStepF: 2, noteOverF: 4, source: "CP" },
  wire: { beyondTipCm: { from: 10, to: 20 }, gripCm: 10, source: "CP" },
  release: [
    {
      retentions: ["locking loop"],
      says: "release the string at the hub, straighten the loop over the wire; the string is looked for before the tube is pulled",
      comesOut: "the loop, straight, and all of the string",
      source: "CP",
    },
    {
      retentions: ["two loops", "loop"],
      says: "straighten the loop over the wire under imaging",
      comesOut: "both ends, whole",
      source: "CP",
    },
    {
      retentions: ["balloon"],
      says: "draw back all of the water and write down how much came",
      comesOut: "the balloon, whole and empty",
      source: "CP",
    },
    {
      retentions: ["bumper", "button"],
      says: "by traction or from within, as its package says; not cut and left without a plan",
      comesOut: "the bumper, whole",
      source: "CP",
    },
    { retentions: ["cuff"], says: "free the cuff from the tract", comesOut: "the cuff, whole", source: "CP" },
    {
      retentions: ["suture", "external disc"],
      says: "cut the stitch or loosen the disc at the skin",
      comesOut: null,
      source: "CP",
    },
  ],
  notOverWire: [
    {
      kinds: ["ureteral stent", "metal ureteral stent", "plastic biliary stent"],
      says: "wholly inside: exchanged from within or through another access, not over a wire from the skin",
      source: "CP",
    },
    {
      kinds: ["bumper gastrostomy"],
      says: "the bumper does not follow a wire through the tract: by traction or from within",
      source: "CP",
    },
  ],
  readyF: { below: 2, above: 2, source: "CP" },
  findInsides: { withinDays: 14, source: "CP" },
  reasons: {
    asks: ["does not pass", "wire too short", "step over the note"],
    offered: [
      "the operator has seen it and goes on",
      "another wire is at hand",
      "the tube comes out beside the wire",
      "access is renewed if lost",
    ],
    source: "CP",
  },
  besideStent: { says: "removal of a nephrostomy beside a stent: under imaging", source: "CP" },
};
