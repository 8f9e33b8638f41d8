import type { Zone } from "#shared/day/instant.ts";
import { printInstant } from "#shared/day/print-day.ts";
import type { Microlitres } from "#shared/output/microlitre.ts";
import type { Reading } from "#shared/output/reading.ts";
import { printVolume } from "#shared/words/output.ts";

/** A volume that an answer does not agree with: "400 mL is entered for this tube, up to Mon 30 Nov 2026, 08:00. Which is right?" */
export const drainedWords = (volume: Microlitres, { to }: Pick<Reading, "to">, zone: Zone): string =>
  `${printVolume(volume)} is entered for this tube, up to ${printInstant(to, zone)}. Which is right?`;
