import { plainWord } from "#shared/record/field/match-word.ts";
import { BOTH_SIDES, tubeWords } from "#shared/sheet/tube-words.ts";
import type { Side } from "#shared/tube/vocabulary.ts";
import type { VisitAct } from "#shared/visit/visit-acts.ts";

/** What a cell says of a booking. Null: it does not say. */
export type WhatSaid = {
  readonly act: VisitAct | null;
  /** The kind by its name: "nephrostomy". */
  readonly kind: string | null;
  readonly side: Side | null;
  readonly both: boolean;
};

/** Words of each act, as hospitals write them (practice, no source). */
const actWords: Readonly<Record<VisitAct, RegExp>> = {
  exchange: /\b(?:re)?(?:exchange|exchg|change|replace(?:ment)?|swap|renewal)[sd]?\b/gi,
  check: /\b(?:check|tubogram|nephrostogram|cholangiogram|contrast study|injection|review)s?\b/gi,
  removal: /\b(?:removal|remove|removed|out|extraction)\b/gi,
};
const LEFT = /\b(?:left|lt)\b/i;
const RIGHT = /\b(?:right|rt)\b/i;

/** One act alone; two of them say neither. */
function actIn(text: string): VisitAct | null {
  const found = (Object.keys(actWords) as VisitAct[]).filter((act) => text.search(actWords[act]) >= 0);
  return found.length === 1 ? (found[0] ?? null) : null;
}

const withoutActs = (text: string): string =>
  Object.values(actWords)
    .reduce((left, words) => left.replace(words, " "), text)
    .replace(/\b(?:of|for|the|and|or|routine|ir)\b/gi, " ")
    .replace(/\s+/g, " ")
    .trim();

function sideIn(text: string): Side | null {
  if (LEFT.test(text) === RIGHT.test(text)) return null;
  return LEFT.test(text) ? "left" : "right";
}

/** What a cell like "PCN exchange, left" says: the act, the kind, the side. What is not said is not guessed. */
export function whatSaid(cell: string): WhatSaid {
  const both = BOTH_SIDES.test(cell);
  const rest = withoutActs(cell.replace(BOTH_SIDES, " "));
  const read = plainWord(rest) === "" ? null : tubeWords(rest);
  const tube = read?.ok ? read.value : { kind: null, side: null };
  const side = tube.side === "left" || tube.side === "right" ? tube.side : sideIn(rest);
  return { act: actIn(cell), kind: tube.kind, side: both ? null : side, both };
}
