import { type Day, isDay } from "#shared/day/day.ts";
import { readDay } from "#shared/day/read-day.ts";
import { searchLetters, searchWord } from "#shared/record/patient/search-text.ts";

/** Where what was typed in the finder waits for its page of results: with the drafts of whoever typed it. */
export const finderDraft = { form: "find", subject: "" } as const;

/** In characters; longer than any name. */
export const LONGEST_TYPED = 200;

/**
 * One way to read what was typed: a patient is meant whose search text holds every word, and, where days stand here, who was born
 * on one of them.
 */
export type Sought = { readonly words: readonly string[]; readonly births: readonly Day[] };

const MOST_TOKENS = 12;
/** A date is typed in so many parts at most: "Tue 3 Apr 1951". */
const LONGEST_DATE = 4;

const NUMBERS = /^(\d{1,2})[ ./-](\d{1,2})[ ./-](\d{4}|\d{2})$/;
const YEAR_FIRST = /^\d{4}[./-]\d{1,2}[./-]\d{1,2}$/;
const MONTH_NAMED = /^(.*[a-z].*\D)(\d{4}|\d{2})$/;

/** 51 is 1951 or 2051; which of them has come, the day tells. */
const yearsOf = (typed: string): readonly string[] =>
  typed.length === 4 ? [typed] : [`19${typed}`, `20${typed}`];

const two = (number = ""): string => number.padStart(2, "0");

function dateTexts(text: string): readonly string[] {
  if (YEAR_FIRST.test(text)) return [text.replace(/[./]/g, "-")];
  const [, first, second, year] = NUMBERS.exec(text) ?? [];
  if (year !== undefined)
    return yearsOf(year).flatMap((full) => [
      `${full}-${two(second)}-${two(first)}`,
      `${full}-${two(first)}-${two(second)}`,
    ]);
  const [, before, named] = MONTH_NAMED.exec(text) ?? [];
  return named === undefined ? [] : yearsOf(named).map((full) => `${before}${full}`);
}

/** Every birth date that a text can mean: "3/4/1951" is in April and in March. Without a year it is none. */
function birthsIn(text: string, today: Day): readonly Day[] {
  const read = dateTexts(text).map((each) => readDay(each, { today, direction: "past" }));
  return [...new Set(read.flatMap((day) => (day.ok && isDay(day.value) ? [day.value] : [])))];
}

const isDigits = (token: string): boolean => /\d/.test(token) && !/\p{L}/u.test(token);

/** Tokens as words; digits that follow one another are one number, however it was parted: "555-01 17". */
function wordsOf(tokens: readonly string[]): readonly string[] {
  const parts: string[] = [];
  tokens.forEach((token, index) => {
    const follows = isDigits(token) && isDigits(tokens[index - 1] ?? "");
    parts.push(follows ? (parts.pop() ?? "") + token : token);
  });
  return parts.map(searchWord).filter((word) => word !== "");
}

const ABROAD = /(?:^|\s)(?:\+|00)[\d ().-]{9,}$/;
/** Codes of countries have one to three digits. Which is which, a number does not say, so the longest is left out. */
const COUNTRY_CODE = 3;

/** A telephone typed with the code of its country, as it may stand here without. */
function withoutCountry(text: string, words: readonly string[]): readonly Sought[] {
  const last = words.at(-1);
  if (last === undefined || !ABROAD.test(text)) return [];
  return [{ words: [...words.slice(0, -1), searchWord(last.slice(COUNTRY_CODE))], births: [] }];
}

/**
 * Every way to read what is typed in the finder: parts of a name in any order, a record number with or without leading zeros, a
 * telephone however it is parted, a birth date as people type it, and a date beside a name. Empty where nothing was typed.
 */
export function readSought(typed: string, today: Day): readonly Sought[] {
  const text = searchLetters(typed.slice(0, LONGEST_TYPED)).replace(/[,;]/g, " ").trim();
  const tokens = text.split(/\s+/).slice(0, MOST_TOKENS);
  const words = wordsOf(tokens);
  if (words.length === 0) return [];
  const dated = tokens.flatMap((_, from) =>
    tokens.slice(from, from + LONGEST_DATE).flatMap((__, more): readonly Sought[] => {
      const until = from + more + 1;
      const births = birthsIn(tokens.slice(from, until).join(" "), today);
      if (births.length === 0) return [];
      return [{ words: wordsOf([...tokens.slice(0, from), ...tokens.slice(until)]), births }];
    }),
  );
  return [{ words, births: [] }, ...withoutCountry(text, words), ...dated];
}

/** The record number that was typed alone, if it was one; a patient who has it is meant before all others. */
export function numberSought([first]: readonly Sought[]): string | null {
  const [only, other] = first?.words ?? [];
  return only !== undefined && other === undefined && /\d/.test(only) ? only : null;
}
