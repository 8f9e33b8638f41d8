import { type KindDefinition, row } from "./define.ts";

/**
 * A tube that is none of the kinds: its role and mode are asked, and its date is the operator's.
 */
export const otherKinds = {
  other: {
    name: "other tube",
    shortForms: ["other", "another tube"],
    role: null,
    mode: null,
    organ: null,
    sided: false,
    usualFrench: null,
    retention: null,
    outside: true,
    expectedFluid: [],
    flush: null,
    ifOut: null,
    output: null,
    tip: null,
    skin: null,
    rows: [
      row({
        id: "other",
        asks: "operator's date",
        source: "CP",
      }),
    ],
  },
} as const satisfies Record<string, KindDefinition>;
