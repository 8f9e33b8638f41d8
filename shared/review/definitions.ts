import type { Analyte } from "#shared/review/analyte.ts";
import { type Concentration, concentration } from "#shared/review/concentration.ts";

type Published = {
  /** "the published definition of a bile leak": how its authors put it, and what it is of. */
  readonly called: string;
  readonly bound: "over" | "at least";
  /** When it counts and what else belongs to it, as it goes on after the limit. */
  readonly besides: string;
  readonly source: string;
  /** What of it was not read in the source's abstract; null where all was. */
  readonly fromMemory: string | null;
};

/** A value that is compared with another one, so many times as large; or a value that is compared by itself. */
export type Definition = Published &
  (
    | { readonly compares: "serum" | "upper limit"; readonly times: number }
    | { readonly compares: "itself"; readonly level: Concentration; readonly words: string }
  );

/** What was published for each analyte. It is shown beside the value and decides nothing. */
export const definitions = {
  amylase: {
    called: "definition of a pancreatic fistula after surgery",
    compares: "upper limit",
    times: 3,
    bound: "over",
    besides: " on or after day 3 after surgery, with a condition that comes of it",
    source: "ISGPS 2016, Bassi et al., Surgery 2017;161:584",
    fromMemory: "the day from memory",
  },
  bilirubin: {
    called: "definition of a bile leak",
    compares: "serum",
    times: 3,
    bound: "at least",
    besides: " on or after day 3 after surgery, or bile outside that needed an intervention",
    source: "ISGLS, Koch et al., Surgery 2011;149:680",
    fromMemory: null,
  },
  creatinine: {
    called: "limit for urine in pleural fluid",
    compares: "serum",
    times: 1,
    bound: "over",
    besides: "; in any other fluid that is common practice, without a source",
    source: "Stark et al., Arch Intern Med 1982;142:1509",
    fromMemory: "from memory",
  },
  triglyceride: {
    called: "limit for chyle in pleural fluid",
    compares: "itself",
    level: concentration(110, "0.011286"),
    words: "110 mg/dL",
    bound: "over",
    besides: ", and open from 50 mg/dL (0.564 mmol/L) on",
    source: "Staats et al., Mayo Clin Proc 1980;55:700",
    fromMemory: null,
  },
} as const satisfies Record<Analyte, Definition>;

export const definitionOf = (analyte: Analyte): Definition => definitions[analyte];
