import { heading } from "#shared/sheet/heading.ts";

/** What a column can say: the heading that it is shown by, and other headings that clinics give it. */
export type ColumnNames = { readonly label: string; readonly also: readonly string[] };

/** A heading says little more than what it names: "date placed, if known", not a sentence that happens to hold "size". */
const MOST_OTHER_WORDS = 2;
const IN_BRACKETS = /\([^)]*\)/g;

const isWithin = (words: string, text: string): boolean =>
  ` ${text} `.includes(` ${words} `) && text.split(" ").length - words.split(" ").length <= MOST_OTHER_WORDS;

/** How the headings of a sheet are understood that has these fields. */
export function calledFields<F extends string>(fields: Readonly<Record<F, ColumnNames>>) {
  const called = (Object.keys(fields) as F[]).map((field) => ({
    field,
    words: [fields[field].label, ...fields[field].also].map(heading),
  }));

  /** The field that a heading speaks of: by its own words, else by the longest of ours that stands in it. */
  const fieldCalled = (text: string): F | undefined => {
    const typed = heading(text.replace(IN_BRACKETS, " "));
    const exact = called.find(({ words }) => words.includes(typed));
    if (exact !== undefined) return exact.field;
    const within = called.flatMap(({ field, words }) =>
      words.filter((word) => isWithin(word, typed)).map((word) => ({ field, length: word.length })),
    );
    return within.toSorted((a, b) => b.length - a.length)[0]?.field;
  };

  /** A heading that is one of ours, word for word: what tells a line of headings from a line below it. */
  const isHeading = (text: string): boolean => called.some(({ words }) => words.includes(heading(text)));

  return { fieldCalled, isHeading };
}
