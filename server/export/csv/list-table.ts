import { LIST_START } from "#db/queries/step-lists.ts";
import { placedSteps, unplacedSteps } from "#db/queries/work-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { NONE, orUnknown, yesNo } from "#server/export/csv/cells.ts";
import { type CsvTable, csvLines } from "#server/export/csv/csv-table.ts";
import { askedFilter } from "#server/lists/asked-filter.ts";
import { type ListLine, lineOf } from "#server/lists/list-line.ts";
import type { AskingList } from "#server/lists/work-list.ts";
import type { Person } from "#shared/access/person.ts";
import { type Day, daysBetween } from "#shared/day/day.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { printMinute } from "#shared/words/offers.ts";
import { ownerText, standingBesideName, stepAsks, stepNames } from "#shared/words/steps.ts";
import { whySentence } from "#shared/words/why.ts";
import { listName } from "#shared/words/work-lists.ts";

type Row = { readonly line: ListLine; readonly today: Day };

function daysIn({ line: { tube }, today: on }: Row): string | number {
  if (tube === null) return NONE;
  if (tube.clockEarliest === null || tube.clockLatest === null) return orUnknown(null);
  const [most, least] = [tube.clockEarliest, tube.clockLatest].map((since) => daysBetween(since, on));
  return most === least ? (most ?? 0) : `${least} to ${most}`;
}

const tubeOf = ({ line: { tube, visit } }: Row): string =>
  tube?.name ?? (visit?.tubes.map(({ name }) => name).join(" and ") || "the patient");

/** A list as it stands on the page, in words; days as a spreadsheet sorts them. */
const columns: CsvTable<Row>["columns"] = {
  "family name": ({ line }) => line.patient.familyName,
  "given name": ({ line }) => line.patient.givenName,
  "birth date": ({ line }) => orUnknown(line.patient.birthOn),
  number: ({ line }) => line.patient.number ?? NONE,
  tube: tubeOf,
  step: ({ line }) => stepNames[line.step.kind],
  asks: ({ line }) => stepAsks[line.step.kind],
  "days in": daysIn,
  earliest: ({ line }) => line.step.earliest ?? NONE,
  target: ({ line }) => line.step.target ?? NONE,
  latest: ({ line }) => line.step.latest ?? NONE,
  "due on": ({ line }) => line.step.dueOn,
  provisional: ({ line }) => yesNo(line.step.provisional),
  standing: ({ line, today: on }) => standingBesideName(line.step, on),
  "standing on": ({ today: on }) => on,
  visit: ({ line }) => line.visit?.state ?? NONE,
  "visit on": ({ line }) => line.visit?.on ?? NONE,
  "visit at": ({ line: { visit } }) =>
    visit === null ? NONE : visit.from === null ? orUnknown(null) : printMinute(visit.from),
  "visit where": ({ line: { visit } }) => (visit === null ? NONE : (visit.where ?? "here")),
  owner: ({ line }) => ownerText(line.owner),
  "protocol's row": ({ line }) => (line.row === "example" ? "EXAMPLE, approved by nobody" : line.row),
  why: ({ line }) => line.step.why.map(whySentence).join(" "),
};

/** Lines that one file holds at most: more than any clinic has steps. */
const MOST = 1_000_000;

/** A list as a file: its name, which holds nothing of a patient, and its text. */
export type ListFile = { readonly name: string; readonly text: string };

/**
 * Every line of a list under its filter, in the order in which that person sees it, as one file by RFC 4180. Throws what the filter is
 * refused for: a file that held more or less than was asked for would be a wrong list.
 */
export function listFile(
  db: Database,
  { id: staffId }: Pick<Person, "id">,
  { list, filter: texts }: AskingList,
): ListFile {
  const on = today(db);
  const { filter, asked } = askedFilter(db, texts ?? {});
  if (filter === null) throw new DomainError(asked.refusals);
  const of = { list, staffId, today: on, filter };
  const rows = (read: Database): Row[] =>
    [...placedSteps(read, of), ...unplacedSteps(read, of, { place: LIST_START, limit: MOST })].map((row) => ({
      line: lineOf(row, on),
      today: on,
    }));
  const words = listName(list)
    .toLowerCase()
    .replace(/[^a-z]+/g, "-");
  return { name: `${words}-${on}.csv`, text: [...csvLines({ columns, rows }, db)].join("") };
}
