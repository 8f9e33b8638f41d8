import { DomainError, type Refusal } from "#shared/errors/refusal.ts";

/** What a use case refuses: its list of things to mend, or [] when it went through. Any other error is thrown on. */
export function refusalsOf(work: () => unknown): readonly Refusal[] {
  try {
    work();
    return [];
  } catch (error) {
    if (error instanceof DomainError) return error.refusals;
    throw error;
  }
}
