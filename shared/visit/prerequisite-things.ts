/** What may have to be settled before a visit. Which of it a visit asks for, and by when, the clinic's rows say. */
export const prerequisiteThings = [
  "signed order",
  "blood thinners",
  "labs",
  "allergies",
  "antibiotic cover",
  "fasting",
  "pregnancy test",
  "escort",
  "interpreter",
  "transport",
  "lies prone",
  "dialysis or chemotherapy",
  "isolation",
] as const;
export type PrerequisiteThing = (typeof prerequisiteThings)[number];
