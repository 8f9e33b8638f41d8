/** The field that the key `/` goes to. */
export const FINDER_ID = "finder";
