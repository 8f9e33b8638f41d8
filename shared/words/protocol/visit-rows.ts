import type { Protocol } from "#shared/protocol/protocol.ts";
import { leadWords } from "#shared/words/prerequisites.ts";
import { eachRow, ifAny, noRows, type RowWords, rowWords } from "#shared/words/protocol/row-words.ts";
import { workingDaysWords } from "#shared/words/working-days.ts";

/** What is settled before a visit, and by when. */
export function visitRowWords({ visits }: Protocol): readonly RowWords[] {
  if (visits === null) return [noRows("visits", "What is settled before a visit")];
  return [
    ...eachRow(
      "visits.prerequisites",
      visits.prerequisites,
      ({ says, workingDaysBefore, leadHours }) =>
        `${says}; settled by ${workingDaysWords(workingDaysBefore)}${ifAny(leadHours, (hours) => `; ${leadWords(hours)}`)}`,
    ),
    rowWords(
      "visits.confirmed",
      visits.confirmed,
      ({ workingDaysBefore }) => `by ${workingDaysWords(workingDaysBefore)}`,
    ),
  ];
}
