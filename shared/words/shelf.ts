import type { CoaxialSort } from "#shared/fit/coaxial.ts";
import { wordsFor } from "#shared/record/field/match-word.ts";

/** What people type for a sort of thing; the first is the word that is shown. */
export const sortWords = wordsFor<CoaxialSort>({
  wire: ["guidewire", "guide wire", "wires"],
  needle: ["access needle", "puncture needle", "needles"],
  stiffener: ["stiffening cannula", "metal stiffener", "stylet", "cannula"],
  dilator: ["dilators"],
  tube: ["drain", "catheter", "stent", "tubes"],
  sheath: ["introducer", "introducer sheath", "peel-away sheath", "sheaths"],
  extension: ["jejunal extension", "j extension"],
});
