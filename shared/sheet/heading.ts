/** A heading as it is compared: lower case, accents and signs removed. "Date  placed:" and "date placed" are one. */
export const heading = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/\p{Diacritic}/gu, "")
    .toLowerCase()
    .replace(/[^\p{Letter}\p{Number}]+/gu, " ")
    .trim();
