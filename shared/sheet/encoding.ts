/** Names of the encoding standard (encoding.spec.whatwg.org) for what spreadsheets write. */
export const encodings = [
  "utf-8",
  "utf-16le",
  "utf-16be",
  "windows-1252",
  "windows-1250",
  "windows-1251",
  "macintosh",
] as const;
export type Encoding = (typeof encodings)[number];
