import type { SessionSymptom } from "#shared/output/reading.ts";
import { wordsFor } from "#shared/record/field/match-word.ts";

/** What people type for what is felt while a tube is drained; the first is the word that is shown. */
export const sessionSymptomWords = wordsFor<SessionSymptom>({
  cough: ["coughing"],
  pain: ["ache", "hurts"],
  breathlessness: ["breathless", "short of breath", "shortness of breath", "dyspnea", "sob"],
});
