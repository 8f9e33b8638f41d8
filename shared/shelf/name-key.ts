/** A name as it is compared: in lower case, with single blanks. */
export const nameKey = (name: string): string => name.trim().replace(/\s+/g, " ").toLowerCase();
