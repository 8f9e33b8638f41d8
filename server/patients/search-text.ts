/** Lower case, accents and doubled blanks removed: what the finder compares, on both sides. */
export const searchText = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/\p{Diacritic}/gu, "")
    .toLowerCase()
    .replace(/\s+/g, " ")
    .trim();
