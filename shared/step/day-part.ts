/** The parts of Today in the order in which they are read; each open step that needs somebody now stands in one of them. Words of addresses. */
export const dayParts = ["out", "past-latest", "undated", "visits", "due", "calls", "loose-ends"] as const;
export type DayPart = (typeof dayParts)[number];

export const isDayPart = (word: string): word is DayPart => dayParts.some((part) => part === word);
