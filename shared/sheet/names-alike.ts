import { searchWord } from "#shared/record/patient/search-text.ts";

type Named = { readonly familyName: string; readonly givenName: string };

/** What two spellings of one person's name have in common: letters alone, without accents and in one case. */
export const nameKey = ({ familyName, givenName }: Named): string =>
  `${searchWord(familyName)}, ${searchWord(givenName)}`;
