/** Most that is read of a list at once. Said before a larger file is sent. */
export const SHEET_LIMIT_KIB = 8 * 1024;
