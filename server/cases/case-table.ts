import type { BooksUsed } from "#server/cases/case-books.ts";
import { countsOf } from "#server/cases/case-report.ts";
import { computes } from "#shared/case/case-schema.ts";
import type { Difference } from "#shared/case/differences.ts";
import { isNamed, type Json } from "#shared/case/json.ts";
import type { CaseResult } from "#shared/case/run-case.ts";
import { printDay } from "#shared/day/print-day.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

const outcomes = { agrees: "agrees", differs: "DIFFERS", "cannot run": "CANNOT RUN" } as const;
const OUTCOME_WIDTH = Math.max(...Object.values(outcomes).map((word) => word.length)) + 2;
const COMPUTE_WIDTH = Math.max(...computes.map((word) => word.length)) + 2;
const LONGEST = 300;

const margin = " ".repeat(OUTCOME_WIDTH);

/** As it would stand in the file, cut where it is a whole answer. */
function shown(value: Json): string {
  const text = JSON.stringify(value);
  return text.length > LONGEST ? `${text.slice(0, LONGEST)}...` : text;
}

const differenceLine = ({ at, expected, got }: Difference): string =>
  `${margin}${at}: expected ${shown(expected)}, came out ${got === null ? "nothing" : shown(got)}`;

/** A refusal that nobody expected says what to mend; without it every line would read "came out nothing". */
const refusalLines = (got: Json): readonly string[] =>
  isNamed(got) && Array.isArray(got.says) ? got.says.map((said: Json) => `${margin}refused: ${said}`) : [];

function underneath(result: CaseResult): readonly string[] {
  switch (result.outcome) {
    case "agrees":
      return [];
    case "differs":
      return [...refusalLines(result.got), ...result.differences.map(differenceLine)];
    case "cannot run":
      return [`${margin}${refusalSentence(result.refusal)}`];
  }
}

const lines = (result: CaseResult): readonly string[] => [
  `${outcomes[result.outcome].padEnd(OUTCOME_WIDTH)}${result.compute.padEnd(COMPUTE_WIDTH)}${result.name}`,
  ...underneath(result),
];

function tablesLine({ books, from }: BooksUsed): string {
  const { version, approved } = books.protocol;
  const status =
    approved === null
      ? "EXAMPLE, approved by nobody"
      : `approved by ${approved.by} on ${printDay(approved.on)}`;
  return `Protocol version ${version} (${status}) and calendar version ${books.calendar.version}, ${from}.`;
}

/** What is printed: the tables, a line a case, under it what differs, and the count. */
export function caseTable(results: readonly CaseResult[], used: BooksUsed): string {
  const { agree, differ, cannotRun } = countsOf(results);
  const sums = `${results.length} cases: ${agree} agree, ${differ} differ, ${cannotRun} cannot run.`;
  return [tablesLine(used), "", ...results.flatMap(lines), "", sums].join("\n");
}
