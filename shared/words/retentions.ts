import { wordsFor } from "#shared/record/field/match-word.ts";
import type { Retention } from "#shared/tube/vocabulary.ts";

/** What people type for what holds a tube; the first is the word that is shown. */
export const retentionWords = wordsFor<Retention>({
  "locking loop": ["pigtail", "pig tail", "locking pigtail", "locked pigtail", "locked loop"],
  "two loops": ["double loop", "2 loops", "double pigtail", "two pigtails", "jj", "double j", "dj"],
  loop: ["non-locking loop", "non-locking pigtail", "plain loop", "plain pigtail"],
  balloon: ["water balloon"],
  bumper: ["internal bumper", "mushroom", "dome"],
  "external disc": ["disc", "disk", "external disk", "skin disc", "skin disk"],
  button: ["low-profile button", "low profile"],
  cuff: ["cuffed", "tunnelled cuff", "tunneled cuff"],
  flaps: ["flap", "side flaps", "barbs"],
  suture: ["sutured", "sutures", "stitch", "stitched", "sewn in"],
  none: ["nothing", "not held"],
});
