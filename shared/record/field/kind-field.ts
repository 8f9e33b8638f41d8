import { parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { matchWord, plainWord, type Word } from "#shared/record/field/match-word.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { kindOf, type TubeKind, tubeKinds } from "#shared/tube/kind/kinds.ts";
import type { Side } from "#shared/tube/vocabulary.ts";
import { sideWords } from "#shared/words/sides.ts";

/** "pcn l" says both; a kind alone leaves the side to its own field. */
export type TypedKind = { readonly kind: TubeKind; readonly side: Side | null };

export const kindWords: readonly Word<TubeKind>[] = tubeKinds.map((kind) => {
  const { name, shortForms } = kindOf(kind);
  return { value: kind, words: [name, ...shortForms] };
});

const kindNames = tubeKinds.map((kind) => kindOf(kind).name).join(", ");

const sideOf = (word: string | undefined): Side | undefined =>
  sideWords.find(({ words }) => word !== undefined && words.includes(word))?.value;

/** A side as a whole word only: the "t" of "tube" is none. */
function takeSide(text: string): { readonly rest: string; readonly side: Side | null } {
  const tokens = plainWord(text).split(" ");
  const [first, last] = [sideOf(tokens[0]), sideOf(tokens.at(-1))];
  if (tokens.length > 1 && last !== undefined) return { rest: tokens.slice(0, -1).join(" "), side: last };
  if (tokens.length > 1 && first !== undefined) return { rest: tokens.slice(1).join(" "), side: first };
  return { rest: text, side: null };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A kind by its name or a short form in any case, or by a beginning that only one kind has; a side may stand with it. */
export const kindField = (words: FieldWords): FieldSpec<TypedKind> => ({
  hint: "pcn, jj, abscess drain, chole, peg, gj, spc, chest tube, other; the side may follow: pcn l",
  ...words,
  read: (text) => {
    if (text.trim() === "")
      return unread("text-missing", { what: "the kind of tube, like pcn or abscess drain" });
    const { rest, side } = takeSide(text);
    // A side alone is no beginning of a kind: the "l" of left is none of "lymphocele".
    if (sideOf(plainWord(rest)) !== undefined)
      return unread("word-unknown", { text: rest.trim(), choices: kindNames });
    const kind = matchWord(rest, kindWords);
    return kind.ok ? parsed({ kind: kind.value, side }) : kind;
  },
  echo: ({ kind, side }) =>
    side === null || side === "not sided"
      ? capital(kindOf(kind).name)
      : `${capital(side)} ${kindOf(kind).name}`,
});
