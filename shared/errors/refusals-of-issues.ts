import type * as z from "zod";
import { type RefusalCode, refusalCodes } from "#shared/errors/codes.ts";
import type { Refusal, RefusalArgs } from "#shared/errors/refusal.ts";

const LONGEST_QUOTE = 60;

const codeOf = (message: string): RefusalCode | undefined => refusalCodes.find((code) => code === message);

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  let value = input;
  for (const key of path) {
    value = value !== null && typeof value === "object" ? Reflect.get(value, key) : undefined;
  }
  return value;
}

function argsOf(issue: z.core.$ZodIssue, input: unknown): RefusalArgs {
  const text = valueAt(input, issue.path);
  const quote = typeof text === "string" || typeof text === "number" ? String(text) : "";
  const args = { text: quote.slice(0, LONGEST_QUOTE) };
  return issue.code === "too_big" ? { ...args, limit: Number(issue.maximum) } : args;
}

/** Schemas of shared/record say their refusal code as the message; any other fault of the shape is one code. */
function refusalOf(issue: z.core.$ZodIssue, input: unknown): Refusal {
  const field = issue.path.map(String).join(".");
  const code = codeOf(issue.message);
  if (code === undefined) return { code: "entry-not-understood", field, args: { field } };
  return { code, field, args: argsOf(issue, input) };
}

/** What there is to mend in an input that a schema did not take. */
export const refusalsOfIssues = (issues: readonly z.core.$ZodIssue[], input: unknown): readonly Refusal[] =>
  issues.map((issue) => refusalOf(issue, input));
