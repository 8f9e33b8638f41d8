import { DomainError, type Refusal } from "#shared/errors/refusal.ts";

const listOf = (error: unknown): readonly Refusal[] => {
  if (error instanceof DomainError) return error.refusals;
  throw error;
};

/** What a use case refuses: its list of things to mend, or [] when it went through. Any other error is thrown on. */
export function refusalsOf(work: () => unknown): readonly Refusal[] {
  try {
    work();
    return [];
  } catch (error) {
    return listOf(error);
  }
}

/** The same, of one that takes its time. */
export const laterRefusalsOf = (work: Promise<unknown>): Promise<readonly Refusal[]> =>
  work.then(() => [], listOf);
