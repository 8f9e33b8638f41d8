import { isDay } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { OpenStep } from "#shared/step/step.ts";

/** "Dr Example, since Mon 24 Aug 2026 at 10:20; what was done is not recorded". Null: nobody has the red flag. */
export function flagHolder({ why }: Pick<OpenStep, "why">): string | null {
  const handed = why.find(({ code }) => code === "flag-handed");
  if (handed === undefined) return null;
  const { to, day, at } = handed.args;
  const since = typeof day === "string" && isDay(day) ? printDay(day) : "a day that is not known";
  return `${to}, since ${since}${at === null ? "" : ` at ${at}`}; what was done is not recorded`;
}
