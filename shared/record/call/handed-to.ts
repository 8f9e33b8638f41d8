const NOBODY = /^nobody(\s+yet)?$/i;

export const HANDED_HINT = "a named person, or: nobody yet";

/** Whether what was typed says that nobody has it yet. */
export const saysNobody = (typed: string): boolean => NOBODY.test(typed.trim());

/** Whom a red flag is handed to, as typed: the person, or null for nobody yet. */
export const personIn = (typed: string): string | null => (saysNobody(typed) ? null : typed);
