import { heading } from "#shared/sheet/heading.ts";
import type { LengthUnit } from "#shared/size/length.ts";

const BARE = /^\d*[.,]?\d+$/;

const unitWords: readonly (readonly [LengthUnit, readonly string[]])[] = [
  ["F", ["f", "fr", "french", "ch"]],
  ["mm", ["mm"]],
  ["in", ["in", "inch", "inches"]],
  ["cm", ["cm"]],
];

/** A bare number takes its unit from the heading above it: "8" under "Size Fr" is "8 F". Any other text stands. */
export function withUnitOf(title: string, text: string): string {
  if (!BARE.test(text)) return text;
  const words = heading(title).split(" ");
  const unit = unitWords.find(([, called]) => called.some((word) => words.includes(word)))?.[0];
  return unit === undefined ? text : `${text} ${unit}`;
}
