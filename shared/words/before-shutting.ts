import type { Zone } from "#shared/day/instant.ts";
import { printInstant } from "#shared/day/print-day.ts";
import type { ShuttingDoubt } from "#shared/review/before-shutting.ts";

/** What is said above the form that caps or clamps a tube. */
export function shuttingSentence(doubt: ShuttingDoubt, zone: Zone): string {
  switch (doubt.code) {
    case "air-leak":
      return `Air leaked at ${printInstant(doubt.to, zone)}, the last that is recorded. A chest tube is never clamped while it bubbles.`;
    case "no-air-leak-then":
      return `No air leaked at ${printInstant(doubt.to, zone)}, the last that is recorded. Look at the seal again: a chest tube is never clamped while it bubbles.`;
    case "air-leak-not-recorded":
      return "No reading says whether air leaks. A chest tube is never clamped while it bubbles: look at the seal first.";
    case "conduit-or-neobladder":
      return "The patient has a conduit or a neobladder: ask whether this tube may be shut at all.";
  }
}
