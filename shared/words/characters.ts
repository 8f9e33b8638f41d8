import { wordsFor } from "#shared/record/field/match-word.ts";
import type { Character } from "#shared/tube/vocabulary.ts";

/** What people type for the look of what drains; the first is the word that is shown. */
export const characterWords = wordsFor<Character>({
  serous: [],
  serosanguineous: ["serosanguinous", "serosang", "blood-tinged"],
  bloody: ["blood", "sanguineous"],
  purulent: ["pus"],
  bilious: ["bile", "bile-stained"],
  feculent: ["feces", "fecal", "stool"],
  chylous: ["chyle"],
  clear: [],
  "urine-like": ["urine"],
  food: [],
  debris: [],
  clots: ["clot"],
});
