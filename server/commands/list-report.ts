import type { KeptSheet } from "#server/sheet/load-sheet.ts";
import { setAsideRows } from "#server/sheet/set-aside.ts";
import type { RefusalCode } from "#shared/errors/codes.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { LEFT_OUT } from "#shared/sheet/answers.ts";
import { labelOf } from "#shared/sheet/sheet-fields.ts";
import type { Standing } from "#shared/sheet/stand.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

export const ofKind = <K extends Standing["stands"]>(found: readonly Standing[], kind: K) =>
  found.filter((standing): standing is Extract<Standing, { stands: K }> => standing.stands === kind);

export const counted = (count: number, what: string): string =>
  `${count.toLocaleString("en-US")} ${count === 1 ? what : `${what}s`}`;

/** How the columns are matched, a line each. */
export const matchingLines = ({ sheet, answers }: KeptSheet): readonly string[] => [
  "Columns:",
  ...sheet.headings.map((title, place) => {
    const field = answers.columns[place] ?? LEFT_OUT;
    return `  ${title}: ${field === LEFT_OUT ? LEFT_OUT : labelOf(field)}`;
  }),
];

/** With what each thing that is asked is answered. */
const answeredBy: Partial<Record<RefusalCode, string>> = {
  "date-order-asked": "--dates day-first or --dates month-first",
  "name-order-asked": "--names family-first or --names given-first",
  "column-missing": '--column "HEADING=WHAT IT SAYS"',
  "column-twice": '--column "HEADING=left out"',
};

export function askedLine(refusal: Refusal): string {
  const flag = answeredBy[refusal.code];
  return [refusalSentence(refusal), flag && `Answer with ${flag}`].filter(Boolean).join(" ");
}

const besides = (coming: Extract<Standing, { stands: "comes in" }>): string | null => {
  const { row, alikeRows, alikeHere } = coming;
  if (alikeRows.length > 0)
    return `  Row ${row}: name and birth date of row ${alikeRows.join(", ")}, under another number. Comes in, with a step to find out.`;
  return alikeHere
    ? `  Row ${row}: name and birth date of a record here, under another number. Comes in, with a step to find out.`
    : null;
};

function asideLines(kept: KeptSheet, found: readonly Standing[]): readonly string[] {
  return setAsideRows(kept, ofKind(found, "set aside")).map(({ row, reasons }) => {
    const told = reasons.map(({ heading, sentence }) =>
      heading === null ? sentence : `${heading}: ${sentence}`,
    );
    return `  Row ${row}: ${told.join(" ")}`;
  });
}

/** How the rows of a list would stand: how many of each, and each that is set aside with its reasons. */
export function standingLines(kept: KeptSheet, found: readonly Standing[]): readonly string[] {
  const coming = ofKind(found, "comes in");
  const patients = new Set(coming.map(({ read }) => JSON.stringify(read.details.identifiers[0]))).size;
  const above = ofKind(found, "said above");
  const noTube = ofKind(found, "no tube");
  return [
    `${counted(found.length, "row")}:`,
    `  ${counted(coming.length, "tube")} of ${counted(patients, "patient")} to bring in`,
    `  ${counted(ofKind(found, "here already").length, "row")} brought in before`,
    `  ${counted(above.length, "row")} said above${above.map(({ row, above: by }) => `; row ${row} by row ${by}`).join("")}`,
    ...noTube.map(({ row }) => `  Row ${row} left out: not a row of a tube`),
    `  ${counted(ofKind(found, "set aside").length, "row")} set aside`,
    ...asideLines(kept, found),
    ...coming.flatMap((standing) => besides(standing) ?? []),
  ];
}
