import { expect, it } from "vitest";
import { compareInside } from "#shared/fit/compare-inside.ts";
import type { TubeInside } from "#shared/fit/inside.ts";
import { labelDisagrees } from "#shared/fit/label-disagrees.ts";
import { wireOf } from "#shared/fit/passage.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { blank, bore, bores, inch, reported, rows, takes } from "#tests/factories/tube-inside.ts";

/** A wire of 0.035 in; clearance 0.001. */
const disagrees = (inside: TubeInside): boolean => {
  const goes = wireOf(confirmed(inch(0.035)));
  return labelDisagrees(compareInside(inch(0.035), { goes, inside, rows }));
};
const labelled = (label: number, ...list: Parameters<typeof bores>): TubeInside => ({
  ...takes(label),
  bores: list,
});

it.each<[string, TubeInside, boolean]>([
  ["a label alone", takes(0.035), false],
  ["bores alone", bores(bore("end hole", 0.03)), false],
  ["nothing", blank, false],
  ["both let it pass", labelled(0.035, bore("end hole", 0.04)), false],
  ["both stop it", labelled(0.018, bore("end hole", 0.03)), false],
  ["the label passes, the end hole stops", labelled(0.038, bore("end hole", 0.03)), true],
  ["the label passes, the hub stops", labelled(0.038, bore("hub", 0.03)), true],
  // 0.0365 +- 0.001 less the clearance leaves 0.0345 to 0.0365.
  ["the label passes, the end hole is in doubt", labelled(0.038, bore("end hole", 0.0365, 0.001)), true],
  ["the label stops, the end hole passes", labelled(0.018, bore("end hole", 0.04)), true],
  [
    "the label stops, hub and end hole pass",
    labelled(0.018, bore("hub", 0.05), bore("end hole", 0.04)),
    true,
  ],
  // The tip is what usually stops a wire: a wide shaft does not contradict the label.
  ["the label stops, the shaft passes", labelled(0.018, bore("shaft", 0.075)), false],
  ["the label passes, the tip is closed", { ...takes(0.038), endHole: confirmed("closed") }, true],
  // Figures alone, however well known.
  [
    "a reported label that stops",
    { ...labelled(0.018, bore("end hole", 0.04)), takes: reported(inch(0.018)) },
    true,
  ],
])("%s: %s", (_name, inside, expected) => {
  expect(disagrees(inside)).toBe(expected);
});
