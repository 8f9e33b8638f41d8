import { UMOL_PER_MG_DL } from "#shared/clinical/molar.ts";

/** One unit of a measure: what people type for it, and the figure in the measure's own unit. */
type Unit = { readonly words: readonly string[]; readonly toOwn: (figure: number) => number };

export type Measure = {
  /** The unit of what is stored, and of a figure that is typed alone. */
  readonly unit: string;
  /** Decimals that are kept; what is finer is rounded. */
  readonly decimals: number;
  /** Outside of these it is no such figure, and is refused. */
  readonly least: number;
  readonly most: number;
  /** Outside of these it is asked whether it is meant. It blocks nothing. */
  readonly askUnder: number;
  readonly askOver: number;
  readonly units: readonly Unit[];
};

const own = (figure: number): number => figure;
const times =
  (factor: number) =>
  (figure: number): number =>
    figure * factor;

const as = (...words: readonly string[]): Unit => ({ words, toOwn: own });
const millimole: readonly Unit[] = [as("mmol/l", "meq/l")];

/**
 * What is measured of a patient, with its units. All limits are from memory, not verified: they only find slips. Conversions: those of
 * bilirubin and creatinine stand in molar.ts; the rest is arithmetic.
 */
export const measures = {
  temperature: {
    unit: "°C",
    decimals: 2,
    least: 30,
    most: 45,
    askUnder: 35,
    askOver: 41,
    units: [
      { words: ["c", "°c", "celsius"], toOwn: own },
      { words: ["f", "°f", "fahrenheit"], toOwn: (figure) => ((figure - 32) * 5) / 9 },
    ],
  },
  pain: {
    unit: "of 10",
    decimals: 0,
    least: 0,
    most: 10,
    askUnder: 0,
    askOver: 10,
    units: [{ words: ["of 10", "/10", "out of 10"], toOwn: own }],
  },
  whiteCells: {
    unit: "10^9/L",
    decimals: 2,
    least: 0,
    most: 500,
    askUnder: 1,
    askOver: 50,
    units: [
      as("10^9/l", "x 10^9/l", "g/l"),
      { words: ["/ul", "/mm3", "cells/ul"], toOwn: (figure) => figure / 1000 },
    ],
  },
  crp: {
    unit: "mg/L",
    decimals: 1,
    least: 0,
    most: 1000,
    askUnder: 0,
    askOver: 400,
    units: [as("mg/l"), { words: ["mg/dl"], toOwn: times(10) }],
  },
  creatinine: {
    unit: "umol/L",
    decimals: 0,
    least: 5,
    most: 3000,
    askUnder: 30,
    askOver: 1000,
    units: [
      as("umol/l", "µmol/l", "μmol/l"),
      { words: ["mg/dl"], toOwn: times(Number(UMOL_PER_MG_DL.creatinine)) },
    ],
  },
  bilirubin: {
    unit: "umol/L",
    decimals: 0,
    least: 0,
    most: 1500,
    askUnder: 0,
    askOver: 500,
    units: [
      as("umol/l", "µmol/l", "μmol/l"),
      { words: ["mg/dl"], toOwn: times(Number(UMOL_PER_MG_DL.bilirubin)) },
    ],
  },
  sodium: {
    unit: "mmol/L",
    decimals: 0,
    least: 80,
    most: 220,
    askUnder: 120,
    askOver: 160,
    units: millimole,
  },
  potassium: {
    unit: "mmol/L",
    decimals: 1,
    least: 1,
    most: 12,
    askUnder: 2.5,
    askOver: 6.5,
    units: millimole,
  },
  voidedVolume: {
    unit: "mL/24 h",
    decimals: 0,
    least: 0,
    most: 30_000,
    askUnder: 0,
    askOver: 5000,
    units: [
      { words: ["ml", "ml/24 h", "ml/24h", "ml/day", "cc"], toOwn: own },
      { words: ["l", "l/24 h", "l/24h", "l/day"], toOwn: times(1000) },
    ],
  },
} as const satisfies Record<string, Measure>;

export type MeasureName = keyof typeof measures;
export const measureNames = Object.keys(measures) as MeasureName[];
export const measureOf = (name: MeasureName): Measure => measures[name];
