/** The link that leads to the three slots, where a page has one: a key follows it. */
export const BOOK_VISIT_ID = "book-visit";
