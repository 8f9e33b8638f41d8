import { UMOL_PER_MG_DL } from "#shared/clinical/molar.ts";

/** What a laboratory looks for in the fluid of a drain, in the order in which it is asked. */
export const analytes = ["amylase", "bilirubin", "creatinine", "triglyceride"] as const;
export type Analyte = (typeof analytes)[number];

/** A unit that people type, and what one of it is in the analyte's own unit: a decimal that is exact. */
type TypedUnit = { readonly words: readonly string[]; readonly inOwn: string };

type AnalyteUnits = {
  /** The unit of what is stored, and of a number that is typed alone. */
  readonly own: string;
  readonly typed: readonly TypedUnit[];
  /** Decimals that are shown; what is stored is exact. */
  readonly decimals: number;
  /** Over this it is no such value, and is refused; in the own unit. */
  readonly most: number;
  /** A number alone outside of these may have been meant in the other unit: it is asked, and blocks nothing. */
  readonly aloneFrom: number;
  readonly aloneTo: number;
};

const micromolePerLitre = ["umol/l", "µmol/l", "μmol/l"];

/**
 * Units of each analyte. The limits only find slips, and are from memory. 1 mg/dL of triglyceride is taken for 0.011286 mmol/L, from memory (the
 * molar mass of triolein, 885.4 g/mol, gives 0.01129). A pair in one unit does not depend on any factor.
 */
export const analyteUnits = {
  amylase: {
    own: "U/L",
    decimals: 2,
    typed: [{ words: ["u/l", "iu/l", "units/l"], inOwn: "1" }],
    most: 1_000_000,
    aloneFrom: 0,
    aloneTo: 1_000_000,
  },
  bilirubin: {
    own: "umol/L",
    decimals: 2,
    typed: [
      { words: micromolePerLitre, inOwn: "1" },
      { words: ["mg/dl"], inOwn: UMOL_PER_MG_DL.bilirubin },
    ],
    most: 100_000,
    aloneFrom: 2,
    aloneTo: 100_000,
  },
  creatinine: {
    own: "umol/L",
    decimals: 2,
    typed: [
      { words: micromolePerLitre, inOwn: "1" },
      { words: ["mg/dl"], inOwn: UMOL_PER_MG_DL.creatinine },
    ],
    most: 100_000,
    aloneFrom: 20,
    aloneTo: 100_000,
  },
  triglyceride: {
    own: "mmol/L",
    decimals: 3,
    typed: [
      { words: ["mmol/l"], inOwn: "1" },
      { words: ["mg/dl"], inOwn: "0.011286" },
    ],
    most: 1000,
    aloneFrom: 0,
    aloneTo: 30,
  },
} as const satisfies Record<Analyte, AnalyteUnits>;

export const unitsOf = (analyte: Analyte): AnalyteUnits => analyteUnits[analyte];
