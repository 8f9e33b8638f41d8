import { notFound } from "next/navigation";
import type { RefusalCode } from "#shared/errors/codes.ts";
import { DomainError } from "#shared/errors/refusal.ts";

const missingCodes: readonly RefusalCode[] = [
  "patient-unknown",
  "tube-unknown",
  "visit-not-booked",
  "entry-unknown",
  "sheet-gone",
  "nothing-to-undo",
];

const isMissing = (error: unknown): boolean =>
  error instanceof Error &&
  error.cause instanceof DomainError &&
  error.cause.refusals.some(({ code }) => missingCodes.some((missing) => missing === code));

/** What the API answers, or the page that says that nothing is there. */
export async function orNotFound<T>(asked: Promise<T>): Promise<T> {
  try {
    return await asked;
  } catch (error) {
    if (isMissing(error)) notFound();
    throw error;
  }
}
