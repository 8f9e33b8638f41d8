/** Most characters of a single line and of a note in the record. */
export const LINE_LIMIT = 200;
export const NOTE_LIMIT = 2000;

/** No balloon that holds a tube is larger (practice, no source). */
export const MOST_BALLOON_ML = 60;
