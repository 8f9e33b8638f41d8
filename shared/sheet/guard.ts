/**
 * A text that a spreadsheet would run as a formula, guarded or not. A written table puts one apostrophe before it, and reading takes one
 * off, so that a text that was guarded already comes back as it was.
 */
export const RUNS_OR_GUARDED = /^'*[=+\-@\t\r]/;

/** A text as it was before it was guarded; as it is where it was not. */
export const unguarded = (text: string): string =>
  text.startsWith("'") && RUNS_OR_GUARDED.test(text) ? text.slice(1) : text;
