import type { Axis, Place } from "#app/strip/axis.ts";
import { type Day, daysBetween } from "#shared/day/day.ts";

/** The least and the most that a tube's own axis shows, in days: a window in sight on the right, years cut on the left. */
const BEFORE = { least: 60, most: 400 };
const AFTER = { least: 45, most: 400 };
const MARGIN = 7;
/** The right part holds the name of an event that happened today. */
const AFTER_SHARE = 0.3;

const between = (days: number, { least, most }: typeof BEFORE): number =>
  Math.min(most, Math.max(least, days + MARGIN));

/** The axis of one tube: from the beginning of its catheter's clock to the end of its window, as far as either may reach. */
export function tallAxis(today: Day, began: Day | null, lastDay: Day | null): Axis {
  const before = between(began === null ? 0 : daysBetween(began, today), BEFORE);
  const after = between(lastDay === null ? 0 : daysBetween(today, lastDay), AFTER);
  return { before, after: Math.max(after, Math.ceil(before * AFTER_SHARE)) };
}

/** A name to be printed over the strip, beginning at its place. */
export type Label = { readonly at: Place; readonly text: string };
export type PlacedLabel = Label & { readonly lane: number };

/** Widths that labels are laid out for, in CSS pixels: a tube's page on a small desktop screen, and a letter of the small size. */
const DRAWING_WIDTH = 900;
const LETTER_WIDTH = 6.6;
const GAP = 10;

/**
 * Gives each label a lane, 0 the lowest, so that none lies over another. From the right to the left: a label in a higher lane
 * begins left of those below, so that its leader passes them by.
 */
export function placeLabels(labels: readonly Label[]): PlacedLabel[] {
  const ends: number[] = [];
  const placed = labels
    .toSorted((a, b) => b.at - a.at)
    .map((label): PlacedLabel => {
      const from = (label.at / 100) * DRAWING_WIDTH;
      const to = from + label.text.length * LETTER_WIDTH + GAP;
      const free = ends.findIndex((taken) => to <= taken);
      const lane = free < 0 ? ends.length : free;
      // Its leader crosses the lower lanes here, so they too are taken from here on.
      for (let crossed = 0; crossed <= lane; crossed += 1) ends[crossed] = from;
      return { ...label, lane };
    });
  return placed.toReversed();
}

/** The last of some days; null when none is known. */
export const lastOf = (...days: readonly (Day | null)[]): Day | null =>
  days.reduce((last, day) => (day !== null && (last === null || day > last) ? day : last), null);
