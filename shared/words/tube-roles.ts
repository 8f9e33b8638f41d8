import { wordsFor } from "#shared/record/field/match-word.ts";
import type { Role } from "#shared/tube/vocabulary.ts";

/** What people type for what a tube is for; the first is the word that is shown. */
export const roleWords = wordsFor<Role>({
  collection: ["drains a collection", "fluid collection"],
  "drains an organ": ["organ", "organ drainage", "drains organ"],
  "air and fluid": ["air", "air or fluid"],
  intermittent: ["by session", "sessions"],
  internal: ["inside", "wholly inside"],
  feeding: ["feed", "to feed"],
  venting: ["vent", "decompression", "decompressing"],
  "irrigation access": ["irrigation", "access for irrigation"],
});
