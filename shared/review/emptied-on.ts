import type { Span } from "#shared/output/measured-interval.ts";
import { sum } from "#shared/output/microlitre.ts";
import type { Flush, Reading } from "#shared/output/reading.ts";
import { type Character, characters } from "#shared/tube/vocabulary.ts";

/** What was emptied within a day: a reading that ran over midnight would otherwise give its flush to both days. */
export const emptiedOn = ({ from, to }: Span, readings: readonly Reading[]): readonly Reading[] =>
  readings.filter((reading) => from < reading.to && reading.to <= to);

/** The flush that was given with them; null where nothing was emptied. One that nobody wrote down makes the sum unknown. */
export function flushOf(readings: readonly Reading[]): Flush | null {
  if (readings.length === 0) return null;
  const given = readings.map(({ flushGiven }) => flushGiven);
  if (given.includes("not recorded")) return "not recorded";
  const amounts = given.flatMap((flush) => (typeof flush === "object" ? [flush] : []));
  if (amounts.length === 0) return "none";
  return { ul: sum(amounts.map(({ ul }) => ul)), estimated: amounts.some(({ estimated }) => estimated) };
}

/** How it looked, each word once, in the trade's order. */
export const seenIn = (readings: readonly Reading[]): readonly Character[] =>
  characters.filter((character) => readings.some((reading) => reading.characters.includes(character)));
