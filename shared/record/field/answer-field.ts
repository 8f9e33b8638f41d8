import type { AnswerWord } from "#shared/call/outcomes.ts";
import { parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { matchWord, wordsFor } from "#shared/record/field/match-word.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";

const vocabulary = wordsFor<AnswerWord>({
  yes: ["y", "1"],
  no: ["n", "0"],
  "does not know": ["?", "unknown"],
  "not asked": ["-", "skip"],
});

/** The answer to one question: y, n, or ? where they do not know. Blank: not asked. */
export const answerField = (words: FieldWords): FieldSpec<AnswerWord | null> => ({
  ...words,
  choices: [
    { value: "", label: "- not asked" },
    { value: "yes", label: "yes" },
    { value: "no", label: "no" },
    { value: "does not know", label: "? does not know" },
  ],
  read: (text) => {
    const typed = text.trim();
    if (typed === "") return parsed(null);
    if (typed === "?") return parsed("does not know");
    const word = matchWord(typed, vocabulary);
    return word.ok ? word : unread("choice-unknown", { text: typed });
  },
});
