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
 * Units of each analyte. The limits only find slips, and are from memory. Factors for 1 mg/dL: bilirubin 17.104 umol/L is the molar mass of
 * 584.66 g/mol; creatinine 88.42 umol/L and triglyceride 0.011286 mmol/L are from memory (the molar masses of creatinine, 113.12 g/mol, and of
 * triolein, 885.4 g/mol, give 88.40 and 0.01129). A pair in one unit does not depend on them.
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
      { words: ["mg/dl"], inOwn: "17.104" },
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
      { words: ["mg/dl"], inOwn: "88.42" },
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
