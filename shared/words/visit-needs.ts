import type { NeedLine, VisitNeeds } from "#shared/visit/visit-needs.ts";
import { andList } from "#shared/words/and-list.ts";

/** Names of tubes by id, as they stand inside a sentence: "left nephrostomy". */
export type TubeNames = (tubeId: string) => string;

/** "left nephrostomy, exchange: 30 min", "right nephrostomy, exchange, further tube: 20 min". */
export function needLineWords(line: NeedLine, nameOf: TubeNames): string {
  const what = `${nameOf(line.tubeId)}, ${line.act}`;
  switch (line.code) {
    case "first":
      return `${what}: ${line.minutes} min`;
    case "further":
      return `${what}, further tube: ${line.minutes} min`;
    case "counts whole":
      return `${what}, further tube, no shorter time in the row: ${line.minutes} min`;
    case "no row":
      return `${what}: no row, so what it takes cannot be told`;
  }
}

const roomWords = ({ needs, lines }: VisitNeeds): string => {
  const known = needs.length === 0 ? "in any room" : `in a room with ${andList(needs)}`;
  return lines.some(({ code }) => code === "no row") ? `${known}, as far as there is a row` : known;
};

/** The sum, and the room: "50 min, in a room with fluoroscopy"; that it cannot be told, where it cannot. */
export const visitNeedsWords = (needs: VisitNeeds): string =>
  needs.minutes === null
    ? `the minutes cannot be told: type them; ${roomWords(needs)}`
    : `${needs.minutes} min, ${roomWords(needs)}`;
