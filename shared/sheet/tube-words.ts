import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import { kindField } from "#shared/record/field/kind-field.ts";
import { plainWord } from "#shared/record/field/match-word.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { Retention } from "#shared/tube/vocabulary.ts";
import { retentionWords } from "#shared/words/retentions.ts";
import { sideWords } from "#shared/words/sides.ts";

/** What one cell says of a tube, as the fields of its form take it; null where it says nothing. */
export type TubeWords = {
  readonly kind: string | null;
  readonly side: string | null;
  readonly size: string | null;
  readonly retention: Retention | null;
};

const SIZE = /(?<![\d.,/])~?\d+(?:[.,]\d+)?[ -]?(?:french|fr|ch|f|mm)\b\.?/gi;
const TWO_SIZES = /\d\s*(?:\/|-|to|or|&)\s*\d+(?:[.,]\d+)?[ -]?(?:french|fr|ch|f)\b/i;
export const BOTH_SIDES = /\b(?:bilat(?:eral)?|both(?: sides)?|b\/l|l ?[&+/] ?r|r ?[&+/] ?l|x ?2)\b/i;
const SIDED = /\b(left|right|lt|rt)(?:\.|-?sided)?(?=[\s,)]|$)/gi;
const NOISE = /\b(?:tube|drain|catheter|cath|drainage)\b\.?/gi;

/** Words that name a kind of tube as well: as such they say nothing of what holds it. */
const kindsToo: readonly string[] = kindOf("ureteral stent").shortForms.map(plainWord);

/** What people call the parts that hold a tube, the longest first: "locking loop" before "loop". */
const heldBy = retentionWords
  .filter(({ value }) => value !== "none")
  .flatMap(({ value, words }) => words.map((word) => ({ value, phrase: plainWord(word) })))
  .filter(({ phrase }) => !kindsToo.includes(phrase))
  .toSorted((a, b) => b.phrase.length - a.phrase.length);

const tidy = (text: string): string => text.replace(/\s+/g, " ").trim();

function takeSize(text: string): { readonly rest: string; readonly sizes: readonly string[] } {
  const sizes = [
    ...new Set([...text.matchAll(SIZE)].map(([size]) => size.replace("-", " ").replace(/\.$/, ""))),
  ];
  return { rest: tidy(text.replace(SIZE, " ")), sizes };
}

function takeRetention(text: string): { readonly rest: string; readonly retention: Retention | null } {
  const plain = ` ${plainWord(text)} `;
  const found = heldBy.find(({ phrase }) => plain.includes(` ${phrase} `));
  if (found === undefined) return { rest: text, retention: null };
  return { rest: plain.replace(` ${found.phrase} `, " ").trim(), retention: found.value };
}

/** Signs that part words; a comma between two digits parts none. */
const PARTING = /[();]|,(?!\d)|(?<!\d),/g;

const plainSides = (text: string): string => tidy(text.replace(PARTING, " ").replace(SIDED, "$1"));

const isSide = (text: string): string | undefined =>
  sideWords.find(({ words }) => words.includes(text.toLowerCase()))?.value;

const { read: readKind } = kindField({ label: "Kind" });

/** The kind in what is left of a cell, tried as it stands and without words that every tube has. */
function readRest(rest: string): Parsed<Pick<TubeWords, "kind" | "side">> {
  const side = isSide(rest);
  if (rest === "" || side !== undefined) return parsed({ kind: null, side: side ?? null });
  const tries = [rest, tidy(rest.replace(NOISE, " "))].filter((text) => text !== "");
  const reads = tries.map(readKind);
  const read = reads.find(({ ok }) => ok) ?? reads[0];
  if (read === undefined || !read.ok) return read ?? parsed({ kind: null, side: null });
  return parsed({ kind: kindOf(read.value.kind).name, side: read.value.side });
}

/**
 * What a cell like "PCN L 8Fr pigtail" says: kind, side, size and what holds it. The kind is looked for in all the words first, since
 * "balloon gastrostomy" is one. Two sizes (`two-sizes`) and both sides (`two-tubes`) are refused: one row is one tube.
 * Refusals of the kind: those of the kind's field.
 */
export function tubeWords(cell: string): Parsed<TubeWords> {
  if (BOTH_SIDES.test(cell)) return unread("two-tubes", { text: cell });
  const { rest, sizes } = takeSize(plainSides(cell));
  const [size = null, other] = sizes;
  if (other !== undefined || TWO_SIZES.test(cell)) return unread("two-sizes", { text: cell });
  const whole = readRest(rest);
  const { rest: without, retention } = takeRetention(rest);
  if (whole.ok) return parsed({ ...whole.value, size, retention });
  const kind = retention === null ? whole : readRest(without);
  if (kind.ok) return parsed({ ...kind.value, size, retention });
  // In a list of many rows the names of all kinds would drown what is to be mended.
  return whole.refusal.code === "word-unknown" ? unread("kind-not-said", { text: cell }) : whole;
}
