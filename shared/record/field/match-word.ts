import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";

/** One thing that can be typed, and the words for it; the first is the one that it is called by. */
export type Word<T> = { readonly value: T; readonly words: readonly string[] };

const tidy = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, " ");

const called = <T>(found: readonly Word<T>[]): string => found.map(({ words }) => words[0]).join(", ");

/** The thing typed: by one of its words in any case, or by the beginning of one where only one thing begins so. */
export function matchWord<T>(text: string, vocabulary: readonly Word<T>[]): Parsed<T> {
  const typed = tidy(text);
  const starting = (fits: (word: string) => boolean): readonly Word<T>[] =>
    typed === "" ? [] : vocabulary.filter(({ words }) => words.some((word) => fits(tidy(word))));
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
