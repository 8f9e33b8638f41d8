/** "Rows 3 and 7 of a list" speaks of rows, not of records. */
const ROWS = /\brows? \d+(?:(?:, | and )\d+)*/gi;
const FEWEST_DIGITS = 3;
const MOST = 10;

/** Words of a remark that may be record numbers, as they stand there: those with three digits or more. "F-2209", "880012". */
export const numbersNamed = (says: string): readonly string[] => [
  ...new Set(
    says
      .replace(ROWS, "")
      .split(/[\s,;:()"']+/)
      .map((word) => word.replace(/[.!?]+$/, ""))
      .filter((word) => (word.match(/\d/g)?.length ?? 0) >= FEWEST_DIGITS)
      .slice(0, MOST),
  ),
];
