import { wordsFor } from "#shared/record/field/match-word.ts";
import type { Mode } from "#shared/tube/vocabulary.ts";

/** What people type for how a tube is set; the first is the word that is shown. */
export const modeWords = wordsFor<Mode>({
  "to bag": ["bag", "bagged", "leg bag", "gravity", "to gravity", "gravity bag", "on free drainage"],
  "to bulb": ["bulb", "bulb suction"],
  "to suction": ["suction", "on suction", "wall suction"],
  "underwater seal": ["water seal", "underwater", "on water seal"],
  "one-way valve": ["valve", "flutter valve"],
  "stoma pouch": ["pouch", "stoma bag", "to pouch"],
  capped: ["cap", "to cap", "plugged", "spigot"],
  clamped: ["clamp"],
  "on a clamp trial": ["clamp trial", "clamping trial", "capping trial", "on trial"],
  internal: ["inside", "wholly inside"],
  "to feed": ["feed", "feeding"],
  "to irrigate": ["irrigate", "irrigation"],
});
