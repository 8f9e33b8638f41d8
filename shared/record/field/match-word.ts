import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";

/** One thing that can be typed, and the words for it; the first is the one that it is called by. */
export type Word<T> = { readonly value: T; readonly words: readonly string[] };

/** What is compared of a word: in lower case, hyphens, slashes, commas, dots and brackets as blanks. "G-Tube" is "g tube". */
export const plainWord = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[\s\-/,.()]+/g, " ")
    .trim();

const called = <T>(found: readonly Word<T>[]): string => found.map(({ words }) => words[0]).join(", ");

/** A vocabulary is compared with every cell of a list, so its words are made plain once. */
const plainWords = new WeakMap<readonly Word<unknown>[], readonly (readonly string[])[]>();

function plain(vocabulary: readonly Word<unknown>[]): readonly (readonly string[])[] {
  const known = plainWords.get(vocabulary);
  if (known !== undefined) return known;
  const made = vocabulary.map(({ words }) => words.map(plainWord));
  plainWords.set(vocabulary, made);
  return made;
}

/** The thing typed: by one of its words in any case, or by the beginning of one where only one thing begins so. */
export function matchWord<T>(text: string, vocabulary: readonly Word<T>[]): Parsed<T> {
  const typed = plainWord(text);
  const starting = (fits: (word: string) => boolean): readonly Word<T>[] =>
    typed === "" ? [] : vocabulary.filter((_, index) => plain(vocabulary)[index]?.some(fits));
  const exact = starting((word) => word === typed);
  const found = exact.length > 0 ? exact : starting((word) => word.startsWith(typed));
  const [only, other] = found;
  if (only === undefined) return unread("word-unknown", { text: text.trim(), choices: called(vocabulary) });
  if (other !== undefined) return unread("word-unclear", { text: text.trim(), choices: called(found) });
  return parsed(only.value);
}

/** Words that stand for themselves. */
export const asWords = <T extends string>(values: readonly T[]): readonly Word<T>[] =>
  values.map((value) => ({ value, words: [value] }));

/** Each thing by its own name, and whatever else people type for it. */
export const wordsFor = <T extends string>(
  others: Readonly<Record<T, readonly string[]>>,
): readonly Word<T>[] =>
  (Object.keys(others) as T[]).map((value) => ({ value, words: [value, ...others[value]] }));
