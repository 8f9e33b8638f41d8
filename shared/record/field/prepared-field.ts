import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { matchWord, wordsFor } from "#shared/record/field/match-word.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { NOTE_LIMIT } from "#shared/tube/entry-limits.ts";
import type { AnswerState } from "#shared/visit/prerequisites.ts";
import { answerWords } from "#shared/words/prerequisites.ts";

/** What is said of one thing; null: nothing is said now, it stands as it did. */
export type PreparedTyped = { readonly state: AnswerState; readonly says: string | null } | null;

const vocabulary = wordsFor<AnswerState>({
  settled: ["done", "yes", "ok", "y"],
  "does not apply": ["no", "none", "not needed", "n"],
  "needs its lead time": ["needed", "wait", "lead time"],
  open: ["?", "asked"],
});

/** Whether words have to say who agreed, or what. */
type Needs = { readonly needsWords: boolean };

function read(text: string, { needsWords }: Needs): Parsed<PreparedTyped> {
  const typed = text.trim();
  if (typed === "") return parsed(null);
  if (typed.length > NOTE_LIMIT) return unread("text-too-long", { limit: NOTE_LIMIT });
  const [, word = "", rest = ""] = /^([^:]*)(?::\s*(.*))?$/s.exec(typed) ?? [];
  const state = word.trim() === "?" ? parsed("open" as const) : matchWord(word, vocabulary);
  if (!state.ok) return unread("prepared-not-understood", { text: word.trim() });
  const says = rest.trim() === "" ? null : rest.trim();
  if (needsWords && state.value === "settled" && says === null) return unread("prepared-without-words");
  return parsed({ state: state.value, says });
}

/** One thing that is to be settled: a word for how it stands, and after a colon what was agreed. "settled: plan agreed with Dr Example". */
export const preparedField = (words: FieldWords, needs: Needs): FieldSpec<PreparedTyped> => ({
  ...words,
  read: (text) => read(text, needs),
  echo: (typed) =>
    typed === null ? "" : [answerWords[typed.state], typed.says].filter((part) => part !== null).join(": "),
});
