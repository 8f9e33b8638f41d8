/** Most characters of a single line and of a note in the record. */
export const LINE_LIMIT = 200;
export const NOTE_LIMIT = 2000;
