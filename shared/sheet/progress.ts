/** How far a list has come that is being brought in: rows read, and once all are, about how long writing them takes, in seconds. */
export type Progress = { readonly read: number; readonly writesForS: number | null };

/** How often a page asks for it. */
export const ASKED_EVERY_MS = 500;

/** What takes less is not worth a word. */
export const SAID_FROM_S = 2;

/** While rows are written nothing more can be told, so this is said before. */
export const writingSentence = (seconds: number): string =>
  `Writing all rows in one act; this takes about ${seconds} seconds.`;
