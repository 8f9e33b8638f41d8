/** Most characters of a name, of whoever issues a number, and of a record or telephone number. */
export const NAME_LIMIT = 120;
export const NUMBER_LIMIT = 40;

export const MOST_TELEPHONES = 4;
