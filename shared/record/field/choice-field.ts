import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { plainWord, type Word } from "#shared/record/field/match-word.ts";
import type { Choice, FieldSpec } from "#shared/record/field-spec.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";

const same = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

function chosen(text: string, choices: readonly Choice[]): Parsed<string> {
  const typed = plainWord(text);
  const found =
    choices.find(({ value }) => same(value, text)) ??
    choices.find(({ label }) => same(label, text)) ??
    choices.find(({ words }) => typed !== "" && words?.some((word) => plainWord(word) === typed));
  return found === undefined ? unread("choice-unknown", { text: text.trim() }) : parsed(found.value);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

type Offered<T extends string> = readonly (Choice & { readonly value: T })[];

/** Each under its own word; `vocabulary` adds what else people type for it. */
export const choicesOf = <T extends string>(
  values: readonly T[],
  vocabulary: readonly Word<string>[] = [],
): Offered<T> =>
  values.map((value) => {
    const words = vocabulary.find((word) => word.value === value)?.words;
    return { value, label: capital(value), ...(words && { words }) };
  });

/** One of a few; `none` names the choice that says nothing and comes first. */
export function optionalChoiceField<T extends string>(
  words: FieldWords,
  offered: Offered<T>,
  none: string,
): FieldSpec<T | undefined> {
  const choices = [{ value: "", label: none }, ...offered];
  return {
    ...words,
    choices,
    read: (text) => {
      const read = chosen(text, choices);
      return read.ok ? parsed(offered.find(({ value }) => value === read.value)?.value) : read;
    },
  };
}

/** One of a few that has to be chosen. `what` completes "Type ..." for a blank. */
export function choiceField<T extends string>(
  words: FieldWords & { readonly what: string },
  offered: Offered<T>,
): FieldSpec<T> {
  const { what, ...shown } = words;
  const blank: readonly Choice[] = shown.initial === undefined ? [{ value: "", label: "Choose" }] : [];
  return {
    ...shown,
    choices: [...blank, ...offered],
    read: (text) => {
      if (text.trim() === "") return unread("text-missing", { what });
      const read = chosen(text, offered);
      if (!read.ok) return read;
      const found = offered.find(({ value }) => value === read.value);
      return found === undefined ? unread("choice-unknown", { text }) : parsed(found.value);
    },
  };
}

/** A fact that is one of a few words: "Not said" says nothing, "Unknown" says so. */
export function factChoiceField<T extends string>(
  words: FieldWords,
  offered: Offered<T>,
): FieldSpec<Fact<T> | undefined> {
  const choices = [{ value: "", label: "Not said" }, ...offered, { value: "?", label: "? unknown" }];
  return {
    ...words,
    choices,
    read: (text) => {
      const read = chosen(text, choices);
      if (!read.ok) return read;
      if (read.value === "?") return parsed(unknownFact);
      const value = offered.find((choice) => choice.value === read.value)?.value;
      return parsed(value === undefined ? undefined : { certainty: "confirmed", value });
    },
  };
}

const yesNo = ["yes", "no"] as const;

/** Yes, no, unknown, or nothing said. */
export function yesNoField(words: FieldWords): FieldSpec<Fact<boolean> | undefined> {
  const { choices, read } = factChoiceField(words, choicesOf(yesNo));
  return {
    ...words,
    choices,
    read: (text) => {
      const answer = read(text);
      if (!answer.ok || answer.value === undefined) return answer.ok ? parsed(undefined) : answer;
      if (answer.value.certainty === "unknown") return parsed(unknownFact);
      return parsed({ certainty: answer.value.certainty, value: answer.value.value === "yes" });
    },
  };
}

/** The same where an answer is needed, though "?" will do. `what` completes "Type ...". */
export function neededYesNoField(words: FieldWords, what: string): FieldSpec<Fact<boolean>> {
  const optional = yesNoField(words);
  return {
    ...words,
    choices: [
      { value: "", label: "Choose" },
      ...(optional.choices ?? []).filter(({ value }) => value !== ""),
    ],
    read: (text) => {
      const answer = optional.read(text);
      if (!answer.ok) return answer;
      return answer.value === undefined ? unread("text-missing", { what }) : parsed(answer.value);
    },
  };
}

/** Yes or no, or null for what nobody knows; `unknown` names that choice, which comes first. */
export const knownYesNoField = (words: FieldWords, unknown: string): FieldSpec<boolean | null> => {
  const choices: readonly Choice[] = [
    { value: "", label: unknown, words: ["?", "unknown", "not known"] },
    ...choicesOf(yesNo),
  ];
  return {
    ...words,
    choices,
    read: (text) => {
      const read = chosen(text, choices);
      if (!read.ok) return read;
      return parsed(read.value === "" ? null : read.value === "yes");
    },
  };
};

/** A plain yes or no, no unless said. */
export const flagField = (words: FieldWords): FieldSpec<boolean> => ({
  ...words,
  initial: words.initial ?? "no",
  choices: choicesOf(["no", "yes"]),
  read: (text) => {
    if (text.trim() === "") return parsed(false);
    const read = chosen(text, choicesOf(yesNo));
    return read.ok ? parsed(read.value === "yes") : read;
  },
});
