import { addDays, type Day, isDay } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { OpenStep, Why } from "#shared/step/step.ts";

const ends = ["earliest", "target", "latest"] as const;
type End = (typeof ends)[number];

export type Sum = { readonly end: End; readonly words: string };

type Line = Why | undefined;

function dayIn(line: Line, name: string): Day | null {
  const value = line?.args[name];
  return typeof value === "string" && isDay(value) ? value : null;
}

function daysIn(line: Line, end: End): number | null {
  const value = line?.args[end];
  return typeof value === "number" ? value : null;
}

/**
 * The additions behind a step's dates, before the calendar moved any: "Fri 14 Aug 2026 + 77 days = Fri 30 Oct 2026". An end that
 * does not come from the row, such as the day of the operator's plan, has none.
 */
export function sumsOf(step: OpenStep): readonly Sum[] {
  const line = (code: Why["code"]): Line => step.why.find((each) => each.code === code);
  const row = line("row");
  const start = dayIn(line("counted-from"), "day") ?? dayIn(line("counted-from-span"), "earliest");
  const check = dayIn(line("counted-from-check"), "day");
  return ends.flatMap((end): Sum[] => {
    const from = end === "target" ? (check ?? start) : start;
    const days = daysIn(row, end);
    if (from === null || days === null) return [];
    const sum = addDays(from, days);
    const moved = step.why.some(
      ({ code, args }) => code === "moved" && args.end === end && args.from === sum,
    );
    if (step[end] !== sum && !moved) return [];
    return [{ end, words: `${printDay(from)} + ${days} ${days === 1 ? "day" : "days"} = ${printDay(sum)}` }];
  });
}
