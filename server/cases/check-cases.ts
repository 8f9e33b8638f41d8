import { readFileSync, writeFileSync } from "node:fs";
import type { BooksUsed } from "#server/cases/case-books.ts";
import { caseReport } from "#server/cases/case-report.ts";
import { caseTable } from "#server/cases/case-table.ts";
import type { WorkedCase } from "#shared/case/case-schema.ts";
import { readCases } from "#shared/case/read-cases.ts";
import { type CaseResult, runCase } from "#shared/case/run-case.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** Every case agrees, some differ, a file or a case that cannot be read. */
export const caseExits = { agrees: 0, differs: 1, "cannot run": 2 } as const;

export type Checking = { readonly file: string; readonly report: string | null; readonly used: BooksUsed };
export type Checked = { readonly table: string; readonly exit: number };

function casesIn(file: string): readonly WorkedCase[] {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch {
    throw new DomainError({ code: "cases-unreadable", args: { file } });
  }
  const found = readCases(text);
  if (!found.ok) throw new DomainError(found.refusals);
  return found.cases;
}

function write(file: string, report: ReturnType<typeof caseReport>): void {
  try {
    writeFileSync(file, `${JSON.stringify(report, null, 2)}\n`);
  } catch {
    throw new DomainError({ code: "report-unwritable", args: { file } });
  }
}

const exitOf = (results: readonly CaseResult[]): number =>
  Math.max(...results.map(({ outcome }) => caseExits[outcome]));

/** Runs a file of cases and writes the report. Throws a DomainError for a file that cannot be read or written. */
export function checkCases({ file, report, used }: Checking): Checked {
  const results = casesIn(file).map((worked) => runCase(worked, used.books));
  if (report !== null) write(report, caseReport(results, used));
  return { table: caseTable(results, used), exit: exitOf(results) };
}
