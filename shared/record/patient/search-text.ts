/** Letters that fall into no letter and mark: "Bjørn" is found by "bjorn". */
const oneLetter: Readonly<Record<string, string>> = {
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ø: "o",
  ł: "l",
  đ: "d",
  ð: "d",
  þ: "th",
  ı: "i",
};

/** Lower case without accents. */
export const searchLetters = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/\p{Diacritic}/gu, "")
    .toLowerCase()
    .replace(/[ßæœøłđðþı]/g, (letter) => oneLetter[letter] ?? letter);

/** Letters and digits alone, leading zeros gone: "MRN 0417" is "mrn0417", "000417" and "00-0417" are "417". */
export const searchWord = (text: string): string =>
  searchLetters(text)
    .replace(/[^\p{L}\p{N}]/gu, "")
    .replace(/^0+(?=.)/, "");

/** Parts of a name, each as one word: "O'Brien-Smith Ann" is "obriensmith ann". */
const nameWords = (name: string): readonly string[] => name.split(/[\s,]+/).map(searchWord);

export type Searched = {
  readonly familyName: string;
  readonly givenName: string;
  /** Record numbers. */
  readonly numbers: readonly string[];
  readonly telephones: readonly string[];
};

/** Before a telephone's digits, so that none is taken for a whole record number. */
const TELEPHONE = "t";

/** What the finder compares of a patient: words with a blank before and after each. `readSought` makes what is looked for in it. */
export function searchText({ familyName, givenName, numbers, telephones }: Searched): string {
  const digits = telephones.map((telephone) => searchWord(telephone.replace(/\D/g, "")));
  const words = [
    ...nameWords(familyName),
    ...nameWords(givenName),
    ...numbers.map(searchWord),
    ...digits.filter((each) => each !== "").map((each) => TELEPHONE + each),
  ];
  return ` ${words.filter((word) => word !== "").join(" ")} `;
}
