import { type Parsed, parsed } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { matchWord, type Word } from "#shared/record/field/match-word.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";

/** Several words of a closed list, with commas between, each by a word for it or its beginning: "crust, hard". Blank is undefined. */
export function wordsField<T extends string>(
  words: FieldWords,
  vocabulary: readonly Word<T>[],
): FieldSpec<readonly T[] | undefined> {
  const read = (text: string): Parsed<readonly T[] | undefined> => {
    const typed = text.split(",").filter((part) => part.trim() !== "");
    if (typed.length === 0) return parsed(undefined);
    const found = new Set<T>();
    for (const part of typed) {
      const match = matchWord(part, vocabulary);
      if (!match.ok) return match;
      found.add(match.value);
    }
    return parsed([...found]);
  };
  return { ...words, read, echo: (found) => found?.join(", ") ?? "" };
}
