import { searchLetters } from "#shared/record/patient/search-text.ts";

/** A heading as it is compared: lower case, accents and signs removed. "Date  placed:" and "date placed" are one. */
export const heading = (text: string): string =>
  searchLetters(text)
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
