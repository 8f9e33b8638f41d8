/** Where what was typed in the finder waits for its page of results: with the drafts of whoever typed it. */
export const finderDraft = { form: "find", subject: "" } as const;

/** In characters; longer than any name. */
export const LONGEST_TYPED = 200;
