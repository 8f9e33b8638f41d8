import type { RefusalCode } from "#shared/errors/codes.ts";

/** What a refusal sentence may quote. Never a name or a telephone number. */
export type RefusalArgs = Readonly<Record<string, string | number>>;

/**
 * One thing to mend. `field` is the form's field that it stands beside; without one it concerns the whole entry.
 * The sentence is made on display by shared/words/refusals.ts.
 */
export type Refusal = { readonly code: RefusalCode; readonly field?: string; readonly args?: RefusalArgs };

/** What a reader of typed text returns: a value, or the one thing to mend. Never NaN, never null for bad text. */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusal: Refusal };

export const parsed = <T>(value: T): Parsed<T> => ({ ok: true, value });

export const unread = (code: RefusalCode, args?: RefusalArgs): Parsed<never> => ({
  ok: false,
  refusal: args === undefined ? { code } : { code, args },
});

/** The one error class. Thrown by use cases when nothing was written; carries every refusal at once. */
export class DomainError extends Error {
  readonly refusals: readonly Refusal[];

  constructor(refusals: Refusal | readonly Refusal[]) {
    const list = Array.isArray(refusals) ? (refusals as readonly Refusal[]) : [refusals as Refusal];
    super(list.map((refusal) => refusal.code).join(", "));
    this.name = "DomainError";
    this.refusals = list;
  }
}
