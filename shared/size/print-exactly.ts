import { exactLength } from "#shared/size/exact-length.ts";
import type { Length, LengthUnit } from "#shared/size/length.ts";
import { printLength } from "#shared/size/print-length.ts";

/** "8 F", "2.675 mm": in the first of these units in which nothing is rounded, so that it reads back as it was. */
export function printExactly(length: Length, units: readonly [LengthUnit, ...LengthUnit[]]): string {
  const isExact = (unit: LengthUnit): boolean => {
    const [digits = ""] = printLength(length, unit).split(" ");
    return exactLength(digits, unit) === length;
  };
  return printLength(length, units.find(isExact) ?? units[0]);
}
