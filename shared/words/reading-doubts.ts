import type { Zone } from "#shared/day/instant.ts";
import { printDay, printInstant } from "#shared/day/print-day.ts";
import type { DiaryDoubts } from "#shared/record/output/diary-doubts.ts";
import type { ReadingDoubt } from "#shared/record/output/reading-doubts.ts";
import { doubtSentence, printVolume } from "#shared/words/output.ts";

/** A question, never a refusal: the entry stands as typed when the answer is yes. */
export function readingDoubtSentence(doubt: ReadingDoubt, zone: Zone): string {
  switch (doubt.code) {
    case "more-than-row":
    case "far-over-median":
      return doubtSentence(doubt);
    case "overlaps": {
      const end = printInstant(doubt.to, zone);
      return doubt.from === null
        ? `Another reading ends ${end}. Is this really not the same?`
        : `Another reading runs from ${printInstant(doubt.from, zone)} to ${end}. Is this really another time?`;
    }
    case "before-tube":
      return `The tube is known to lie there since ${printDay(doubt.since)}. Is the date right?`;
    case "after-tube":
      return `The tube was out by ${printDay(doubt.out)}. Is the date right, and the tube?`;
    case "flush-over-order":
      return `That is ${printVolume(doubt.ul)} of flush; ${doubt.order === null ? "no order is known" : `ordered is ${doubt.order}`}. Is the volume right, and is it flush and no other fluid?`;
  }
}

/** All that is asked of one field, one after another; what would be asked twice in the same words once. */
const doubtSentences = (doubts: readonly ReadingDoubt[], zone: Zone): string =>
  [...new Set(doubts.map((doubt) => readingDoubtSentence(doubt, zone)))].join(" ");

/** What is asked, by field. */
export function doubtsByField(
  doubts: readonly ReadingDoubt[],
  zone: Zone,
): Readonly<Partial<Record<string, string>>> {
  const fields = [...new Set(doubts.map(({ field }) => field))];
  const of = (field: string): string =>
    doubtSentences(
      doubts.filter((doubt) => doubt.field === field),
      zone,
    );
  return Object.fromEntries(fields.map((field) => [field, of(field)]));
}

/** The same of the cells of a diary. */
export const diaryDoubtsByCell = (
  asked: DiaryDoubts,
  zone: Zone,
): Readonly<Partial<Record<string, string>>> =>
  Object.fromEntries(
    Object.entries(asked).map(([cell, doubts]) => [cell, doubtSentences(doubts ?? [], zone)]),
  );
