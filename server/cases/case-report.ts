import type { BooksUsed } from "#server/cases/case-books.ts";
import type { CaseResult } from "#shared/case/run-case.ts";
import { RULES_VERSION } from "#shared/step/step.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

const count = (results: readonly CaseResult[], outcome: CaseResult["outcome"]): number =>
  results.filter((result) => result.outcome === outcome).length;

/** How many cases came out which way. */
export const countsOf = (results: readonly CaseResult[]) => ({
  agree: count(results, "agrees"),
  differ: count(results, "differs"),
  cannotRun: count(results, "cannot run"),
});

const resultOf = (result: CaseResult) => {
  if (result.outcome !== "cannot run") return result;
  const { refusal, ...rest } = result;
  return { ...rest, says: refusalSentence(refusal) };
};

/** The report as it is written: which tables, which rules, every case with what came out. */
export const caseReport = (results: readonly CaseResult[], { books, from }: BooksUsed) => ({
  protocol: {
    version: books.protocol.version,
    status: books.protocol.approved === null ? "EXAMPLE" : "approved",
    approved: books.protocol.approved,
  },
  calendar: { version: books.calendar.version },
  tables: from,
  rules: RULES_VERSION,
  ...countsOf(results),
  cases: results.map(resultOf),
});
