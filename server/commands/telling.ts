import { DomainError } from "#shared/errors/refusal.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

/** Runs a command. What it refuses is told in sentences, a line each, and ends it with 1, or with the code that it has for that. */
export async function telling(work: () => Promise<void>, refusedExit = 1): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    for (const refusal of error.refusals) console.error(refusalSentence(refusal));
    process.exitCode = refusedExit;
  }
}
