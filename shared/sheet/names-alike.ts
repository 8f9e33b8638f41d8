/** Lower case, accents, signs and doubled blanks removed, so that "O'Brackenfold, Ottoline" is found as "obrackenfold ottoline". */
const alike = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/[\p{Diacritic}'’.-]/gu, "")
    .toLowerCase()
    .replace(/\s+/g, " ")
    .trim();

type Named = { readonly familyName: string; readonly givenName: string };

/** What two spellings of one person's name have in common. */
export const nameKey = ({ familyName, givenName }: Named): string =>
  `${alike(familyName)}, ${alike(givenName)}`;
