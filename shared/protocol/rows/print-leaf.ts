import type { LeafValue } from "#shared/protocol/rows/leaf.ts";
import { exactLength } from "#shared/size/exact-length.ts";
import { type Length, lengthUnits, UNITS_PER_FRENCH } from "#shared/size/length.ts";
import { printExactly } from "#shared/size/print-exactly.ts";

/** Every length has six decimals of a French at most, since 1 F is 500,000 units. */
function inFrench(length: number): string {
  const whole = Math.floor(length / UNITS_PER_FRENCH);
  const rest = String((length % UNITS_PER_FRENCH) * 2).padStart(6, "0");
  return `${whole}.${rest} F`;
}

/** In the unit that tells it exactly, so that it reads back as it was. */
function printRowLength(length: Length): string {
  const printed = printExactly(length, ["mm", "in", "F", "cm"]);
  const [digits = "", unit] = printed.split(" ");
  const isExact = lengthUnits.some((one) => one === unit && exactLength(digits, one) === length);
  return isExact ? printed : inFrench(length);
}

/** What stands in a place as it would be typed there; "" for "no row". */
export function printLeaf(value: LeafValue, stands: unknown): string {
  if (stands === null || stands === undefined) return "";
  if (value.is === "length") return printRowLength(stands as Length);
  if (value.is === "yes or no") return stands === true ? "yes" : "no";
  if (Array.isArray(stands)) return stands.join(value.is === "list of words" ? "\n" : ", ");
  return String(stands);
}
