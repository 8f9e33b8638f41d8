import type { TRPCError } from "@trpc/server";
import * as z from "zod";
import { DomainError, type Refusal } from "#shared/errors/refusal.ts";
import { refusalsOfIssues } from "#shared/errors/refusals-of-issues.ts";

/** Everything to mend that an error of the API carries; empty for an error of ours. */
export function refusalsOf({ cause }: TRPCError, input: unknown): readonly Refusal[] {
  if (cause instanceof DomainError) return cause.refusals;
  if (cause instanceof z.core.$ZodError) return refusalsOfIssues(cause.issues, input);
  return [];
}
