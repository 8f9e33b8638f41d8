import { printDay } from "#shared/day/print-day.ts";
import type { PrerequisiteThing } from "#shared/visit/prerequisite-things.ts";
import type { AnswerState, Prerequisite } from "#shared/visit/prerequisites.ts";
import { workingDaysWords } from "#shared/words/working-days.ts";

export const thingLabels = {
  "signed order": "Signed order",
  "blood thinners": "Blood thinners, and who agreed the plan",
  labs: "Labs",
  allergies: "Allergies dealt with",
  "antibiotic cover": "Antibiotic cover, with the last culture",
  fasting: "Fasting",
  "pregnancy test": "Pregnancy test",
  escort: "Escort",
  interpreter: "Interpreter",
  transport: "Transport",
  "lies prone": "Lies prone",
  "dialysis or chemotherapy": "Dialysis or chemotherapy days",
  isolation: "Isolation, last of the list",
} as const satisfies Readonly<Record<PrerequisiteThing, string>>;

export const answerWords = {
  open: "open",
  settled: "settled",
  "does not apply": "does not apply",
  "needs its lead time": "needed, and takes its time",
} as const satisfies Readonly<Record<AnswerState, string>>;

/** "settled by Thu 12 Nov 2026, 2 working days before"; without a day of the visit the working days alone. */
export function settleByWords({
  settleBy,
  workingDaysBefore,
}: Pick<Prerequisite, "settleBy" | "workingDaysBefore">): string {
  const before = workingDaysWords(workingDaysBefore);
  return settleBy === null
    ? `settled by ${before}; its date cannot be told yet`
    : `settled by ${printDay(settleBy)}, ${before}`;
}

/** "where it is needed it takes 13 hours before the visit". */
export const leadWords = (hours: number): string =>
  `where it is needed it takes ${hours} ${hours === 1 ? "hour" : "hours"} before the visit`;

/** What the rows say of a thing, each with its source. */
export const prerequisiteSays = ({ rows }: Pick<Prerequisite, "rows">): string =>
  rows.map(({ says, source }) => `${says} (source ${source})`).join("; ");

/** Where no row speaks of a visit: unknown, which is not nothing to settle. */
export const NO_PREREQUISITE_ROW = "The table has no row of what is settled before this visit.";
