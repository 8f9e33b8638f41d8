import type * as z from "zod";
import { type Compute, caseSchemas, computes, type WorkedCase } from "#shared/case/case-schema.ts";
import type { Refusal } from "#shared/errors/refusal.ts";

export type CasesRead =
  | { readonly ok: true; readonly cases: readonly WorkedCase[] }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

const isCompute = (value: unknown): value is Compute => computes.some((compute) => compute === value);

const property = (value: unknown, name: string): unknown =>
  typeof value === "object" && value !== null ? Reflect.get(value, name) : undefined;

const whereOf = (path: readonly PropertyKey[]): string => path.map(String).join(".");

/** One thing of a case that cannot be read, by where it stands in it. */
function refusalOf(name: string, issue: z.core.$ZodIssue): Refusal {
  const where = whereOf(issue.path);
  if (issue.code === "unrecognized_keys")
    return { code: "case-field-unknown", args: { name, where, field: issue.keys.join(", ") } };
  if (issue.code === "invalid_value" && issue.values.length > 1)
    return { code: "case-choice-unknown", args: { name, where, choices: issue.values.join(", ") } };
  return { code: "case-field-not-understood", args: { name, where } };
}

function readCase(item: unknown, place: number): { case: WorkedCase } | { refusals: readonly Refusal[] } {
  const name = property(item, "name");
  if (typeof name !== "string" || name.trim() === "")
    return { refusals: [{ code: "case-without-name", args: { place } }] };
  const compute = property(item, "compute");
  if (!isCompute(compute))
    return { refusals: [{ code: "case-compute-unknown", args: { name, computes: computes.join(", ") } }] };
  const read = caseSchemas[compute].safeParse(item);
  if (read.success) return { case: read.data };
  return { refusals: read.error.issues.map((issue) => refusalOf(name, issue)) };
}

/** A name that stands twice would hide which of the two differs. */
function repeatedNames(cases: readonly WorkedCase[]): readonly Refusal[] {
  const names = cases.map(({ name }) => name.trim());
  const repeated = new Set(names.filter((name, index) => names.indexOf(name) < index));
  return [...repeated].map((name) => ({ code: "case-name-taken", args: { name } }));
}

/**
 * A file of worked cases, or everything in it that is to be mended: `cases-not-json`, `cases-not-a-list`, `case-without-name`,
 * `case-name-taken`, `case-compute-unknown`, `case-field-unknown`, `case-choice-unknown`, `case-field-not-understood`.
 */
export function readCases(text: string): CasesRead {
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return { ok: false, refusals: [{ code: "cases-not-json" }] };
  }
  if (!Array.isArray(data) || data.length === 0)
    return { ok: false, refusals: [{ code: "cases-not-a-list" }] };
  const read = data.map((item: unknown, index) => readCase(item, index + 1));
  const cases = read.flatMap((one) => ("case" in one ? [one.case] : []));
  const refusals = [...read.flatMap((one) => ("case" in one ? [] : one.refusals)), ...repeatedNames(cases)];
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, cases };
}
