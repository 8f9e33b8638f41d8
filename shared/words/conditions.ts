import type { Conditions } from "#shared/tube/payloads.ts";

/** What each condition of a patient is called, inside a sentence. */
export const conditionNames = {
  allergies: "allergies:",
  bloodThinners: "blood thinners:",
  bloodThinnerReason: "blood thinners taken for:",
  isolation: "isolation:",
  pregnancy: "pregnancy",
  stoneFormer: "stone former",
  singleKidney: "single kidney",
  transplantKidney: "transplant kidney",
  conduitOrNeobladder: "conduit or neobladder",
  immuneSuppression: "immune suppression",
  cordInjuryT6OrAbove: "cord injury at T6 or above",
  ascites: "ascites",
  steroids: "steroids",
  malnutrition: "malnutrition",
  diabetes: "diabetes",
  chemotherapy: "chemotherapy",
  hospice: "hospice",
} as const satisfies Record<keyof Conditions, string>;
