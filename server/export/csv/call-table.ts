import { callOrder } from "#db/queries/call-lines.ts";
import type { Database } from "#db/sqlite.ts";
import { type CallListLine, callLines, callNow } from "#server/calls/call-list.ts";
import { NONE, orUnknown, yesNo } from "#server/export/csv/cells.ts";
import { type CsvTable, csvLines } from "#server/export/csv/csv-table.ts";
import type { ListFile } from "#server/export/csv/list-table.ts";
import type { Day } from "#shared/day/day.ts";
import { marksOfCall, reasonsOf, triedWords } from "#shared/words/call-list.ts";
import { telephonesText } from "#shared/words/contact.ts";

type Row = { readonly line: CallListLine; readonly place: number; readonly today: Day };

/** The list as it stands on the page, in words; days as a spreadsheet sorts them. */
const columns: CsvTable<Row>["columns"] = {
  place: ({ place }) => place,
  "family name": ({ line }) => line.patient.familyName,
  "given name": ({ line }) => line.patient.givenName,
  "birth date": ({ line }) => orUnknown(line.patient.birthOn),
  number: ({ line }) => line.patient.number ?? NONE,
  telephones: ({ line }) => telephonesText(line.contact) ?? NONE,
  language: ({ line }) => orUnknown(line.language === "" ? null : line.language),
  interpreter: ({ line }) =>
    line.needsInterpreter === null ? orUnknown(null) : yesNo(line.needsInterpreter),
  "due on": ({ line }) => line.dueOn,
  latest: ({ line }) => line.latestOn ?? NONE,
  at: ({ line }) => line.nextTime ?? NONE,
  part: ({ line }) => line.nextPart ?? NONE,
  "attempts left": ({ line }) => line.attemptsLeft,
  first: ({ line, today }) => marksOfCall(line, today).join("; "),
  why: ({ line }) =>
    reasonsOf(line.steps)
      .map(({ tube, says }) => (tube === null ? says : `${tube}: ${says}`))
      .join(" "),
  tried: ({ line, today }) => triedWords(line.story, today) ?? NONE,
  "standing on": ({ today }) => today,
};

/** Lines that one file holds at most: more than any clinic has patients. */
const MOST = 1_000_000;

/** The whole call list of today in its order, as one file by RFC 4180. Its name holds nothing of a patient. */
export function callFile(db: Database): ListFile {
  const at = callNow(db);
  const { today } = at;
  const rows = (read: Database): Row[] =>
    callLines(read, callOrder(read, { ...at, limit: MOST, skip: 0 }), today).map((line, index) => ({
      line,
      place: index + 1,
      today,
    }));
  return { name: `calls-${today}.csv`, text: [...csvLines({ columns, rows }, db)].join("") };
}
