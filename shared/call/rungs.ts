/** What is tried after the attempts by telephone, one after the other; the last is a physician's decision. */
export const rungs = ["alternate contact", "letter", "referrer and family doctor", "physician"] as const;
export type Rung = (typeof rungs)[number];
