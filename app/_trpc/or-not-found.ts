import { notFound } from "next/navigation";
import { DomainError } from "#shared/errors/refusal.ts";

const isMissing = (error: unknown): boolean =>
  error instanceof Error &&
  error.cause instanceof DomainError &&
  error.cause.refusals.some(
    ({ code }) => code === "patient-unknown" || code === "tube-unknown" || code === "entry-unknown",
  );

/** What the API answers, or the page that says that nothing is there. */
export async function orNotFound<T>(asked: Promise<T>): Promise<T> {
  try {
    return await asked;
  } catch (error) {
    if (isMissing(error)) notFound();
    throw error;
  }
}
