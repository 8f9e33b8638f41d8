import { DomainError, type Refusal } from "#shared/errors/refusal.ts";

/** What the API answers, or what it refuses: for a page that says so in the place of its answer. */
export async function refusedOf<T>(
  asked: Promise<T>,
): Promise<
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly refusals: readonly Refusal[] }
> {
  try {
    return { ok: true, value: await asked };
  } catch (error) {
    if (error instanceof Error && error.cause instanceof DomainError)
      return { ok: false, refusals: error.cause.refusals };
    throw error;
  }
}
