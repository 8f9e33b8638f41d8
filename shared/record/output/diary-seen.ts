import { leaks, otherFluids } from "#shared/output/reading.ts";
import type { DiaryRow } from "#shared/record/output/diary-cells.ts";

/** What follows the volumes of a pasted line, by the cell into which each goes. */
export type Seen = {
  readonly [Cell in keyof Pick<DiaryRow, "characters" | "leak" | "otherIn">]: readonly string[];
};

/** "leak damp", "leak: none"; a word for how much it leaks says so by itself, but for "none", which may be said of anything. */
const LEAK_NAMED = /^leak\w*(?:[\s:]+|$)(.*)$/i;
const LEAK_WORDS: ReadonlySet<string> = new Set(
  leaks.filter((leak) => leak !== "none" && leak !== "not recorded"),
);
const NO_LEAK = /^no leak/i;
/** "other contrast 20"; a fluid with a figure says so by itself. */
const FLUID_NAMED = /^other(?: fluid)?(?: in)?[\s:]+(.*)$/i;
const FLUID = new RegExp(`^(?:${otherFluids.join("|")})\\b.*\\d`, "i");

/** Tells what was seen, what leaked and what went in besides apart, without headings: by their own words. What is none of these was seen. */
export function seenIn(cells: readonly string[]): Seen {
  const seen = { characters: [] as string[], leak: [] as string[], otherIn: [] as string[] };
  for (const cell of cells) {
    const [, leak] = LEAK_NAMED.exec(cell) ?? [];
    const [, fluid] = FLUID_NAMED.exec(cell) ?? [];
    if (leak !== undefined) seen.leak.push(leak === "" ? cell : leak);
    else if (NO_LEAK.test(cell)) seen.leak.push("none");
    else if (LEAK_WORDS.has(cell.toLowerCase())) seen.leak.push(cell);
    else if (fluid !== undefined) seen.otherIn.push(fluid);
    else if (FLUID.test(cell)) seen.otherIn.push(cell);
    else seen.characters.push(cell);
  }
  return seen;
}

/** Both as `seenIn` reads them again. */
export const asSeen = ({ leak, otherIn }: Pick<DiaryRow, "leak" | "otherIn">): readonly string[] => [
  ...(leak === "" ? [] : [`leak ${leak}`]),
  ...(otherIn === "" ? [] : [`other ${otherIn}`]),
];
