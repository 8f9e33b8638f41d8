import type { Refusal } from "#shared/errors/refusal.ts";

/** What speaks against a row that its schema takes: at which address, and beside which of its leaves. */
export type Nonsense = { readonly address: string; readonly refusal: Refusal };
