import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { printLength } from "#shared/size/print-length.ts";
import type { AnySize } from "#shared/size/read-any-size.ts";
import { anySizeRanges, sizeRanges } from "#shared/size/size-ranges.ts";
import { statedOuter } from "#shared/size/stated-size.ts";

/** One size in one unit: the unit's name, the figure, and what is to be known of it. */
export type ConvertedRow = { readonly word: string; readonly says: string; readonly note: string };

const within = (
  length: Length,
  { from, to, unit }: { from: number; to: number; unit: "F" | "in" },
): boolean => length >= lengthOf(from, unit) && length <= lengthOf(to, unit);

/** What a package states is stated of a tube, and of nothing that is thinner or thicker than one. */
const mayBeTube = (length: Length): boolean => within(length, { ...sizeRanges["tube outside"], unit: "F" });

const CENTIMETRE = lengthOf(1, "cm");

function french(length: Length): ConvertedRow[] {
  if (!within(length, anySizeRanges.F)) return [];
  const note =
    "As an outside only: 1 F is 1/3 mm of outer diameter (ISO 20696:2018, 5.5.2 note). It tells no inside.";
  return [{ word: "French", says: printLength(length, "F"), note }];
}

function gauge({ told }: AnySize): ConvertedRow[] {
  if (told.by !== "gauge") return [];
  const note =
    "The outside of a regular wall, from the needle gauge comparison chart. A gauge tells no inside: walls differ, so what a needle takes is a recorded fact.";
  return [{ word: "Gauge", says: `${told.gauge} G`, note }];
}

function stated(length: Length): ConvertedRow[] {
  if (!mayBeTube(length)) return [];
  const { stated: says, least, most } = statedOuter(length);
  const note = `Rounded up to 0.1 mm; the tube may measure ${printLength(least, "mm")} to ${printLength(most, "mm")} (ISO 20696:2018, 5.5.2: outer diameter +-0.33 mm).`;
  return [{ word: "A tube's outside as a package states it", says: printLength(says, "mm"), note }];
}

/**
 * One size in all of the trade's units: French where it may be an outside, inches, millimetres, centimetres of what is at least one long,
 * and what a package states of a tube of that outside. An inside is never told in French.
 */
export const convertedRows = (size: AnySize): readonly ConvertedRow[] => [
  ...gauge(size),
  ...french(size.length),
  { word: "Inches", says: printLength(size.length, "in"), note: "1 in is 25.4 mm." },
  { word: "Millimetres", says: printLength(size.length, "mm"), note: "" },
  ...(size.length >= CENTIMETRE
    ? [{ word: "Centimetres", says: printLength(size.length, "cm"), note: "" }]
    : []),
  ...stated(size.length),
];

/**
 * What is asked of inches that no wire has and a tenth of which one may: "0.35 in". It blocks nothing; a tube may be as thick. Null where nothing
 * is asked.
 */
export function convertedDoubt({ length, told }: AnySize): string | null {
  if (told.by !== "unit" || told.unit !== "in" || within(length, { ...sizeRanges.wire, unit: "in" }))
    return null;
  const tenth = (length / 10) as Length;
  return Number.isSafeInteger(tenth) && within(tenth, { ...sizeRanges.wire, unit: "in" })
    ? `No wire is ${printLength(length, "in")} thick. Is ${printLength(tenth, "in")} meant?`
    : null;
}
