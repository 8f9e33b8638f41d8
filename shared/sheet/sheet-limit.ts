/** Most that is read of a list at once: some 20,000 rows. Said before a larger file is sent. */
export const SHEET_LIMIT_KIB = 8 * 1024;
