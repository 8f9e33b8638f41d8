import type { Protocol } from "#shared/protocol/protocol.ts";
import {
  eachRow,
  ifAny,
  kindsOf,
  NO_ROW,
  type RowWords,
  rowWords,
} from "#shared/words/protocol/row-words.ts";

/** What goes in: flush as ordered, water in a balloon, and the place of a tip. */
export const fluidRowWords = ({ flush, balloon, tips }: Protocol): readonly RowWords[] => [
  ...eachRow("Flush as ordered", flush, { of: ({ kind }) => kind, says: ({ order }) => order }),
  rowWords(
    "Balloon water",
    balloon,
    ({ first, every, lossOverMl, alarmAfter, fill }) =>
      `first looked at on day ${first.from} to ${first.to}, then every ${every} days; a loss over ${lossOverMl} mL is a question, ${alarmAfter} in a row an alarm; filled with ${fill}`,
  ),
  ...eachRow("Tip", tips, {
    of: ({ kind }) => kind,
    says: ({ within, again }) =>
      `confirmed within ${within} days${ifAny(again, (days) => `, and again after ${days}`)}`,
  }),
];

/** What is told or seen and cannot wait, and what is done when a tube is out. */
export const urgentRowWords = ({ redFlags, tubeOut }: Protocol): readonly RowWords[] => [
  ...eachRow("Red flag", redFlags, {
    of: ({ id }) => id,
    says: ({ level, says, untilReached, raisedBy }) => {
      const by = raisedBy.map(({ trouble, grave }) => (grave ? `${trouble}, grave` : trouble));
      return [
        `${level}: ${says}`,
        ifAny(untilReached, (act) => `until reached: ${act}`),
        by.length === 0 ? "" : `raised by an entry: ${by.join("; ")}`,
      ]
        .filter(Boolean)
        .join("; ");
    },
  }),
  ...eachRow("Tube out", tubeOut, {
    of: (row) => `${row.id} (${kindsOf(row)}, ${row.out})`,
    says: ({ immature, mature, untilReached }) =>
      `immature tract: ${immature}; mature: ${mature}; until reached: ${untilReached}`,
  }),
];

/** Who is called, when, and what when nobody is reached. */
export function callRowWords({ firstCall, escalation, calls }: Protocol): readonly RowWords[] {
  const rows = [
    rowWords("First call", firstCall, ({ from, to }) => `day ${from} to ${to} after the start`),
    rowWords(
      "A physician is asked",
      escalation,
      ({ daysPastTarget }) => `${daysPastTarget} days past the target`,
    ),
  ];
  if (calls === null) return [...rows, { word: "Other calls", says: NO_ROW }];
  return [
    ...rows,
    rowWords(
      "Calls of a collection drain",
      calls.collectionEvery,
      ({ days }) => `every ${days.join(" or ")} days`,
    ),
    rowWords(
      "Calls of a trial",
      calls.trialOn,
      ({ days, closed }) => `day ${days.join(", ")}, in hours; ${closed}`,
    ),
    rowWords(
      "Calls before an exchange",
      calls.beforeExchange,
      ({ days, workingDays }) => `${days} days and ${workingDays} working days before`,
    ),
    rowWords("Calls after a removal", calls.afterRemoval, ({ from, to }) => `day ${from} to ${to}`),
    rowWords(
      "Not reached",
      calls.notReached,
      ({ attempts, withinWorkingDays, twiceSameDayHours, lastly }) =>
        `${attempts} attempts within ${withinWorkingDays} working days, twice on the same day in a trial and in the first ${twiceSameDayHours} h; then ${lastly.join(", ")}`,
    ),
    rowWords(
      "Whereabouts of an inpatient",
      calls.whereaboutsEvery,
      ({ days, ward }) => `asked again every ${days} days; ${ward}`,
    ),
  ];
}

/** Classes of bleeding risk, for discussion. */
export function bleedingRowWords({ bleeding }: Protocol): readonly RowWords[] {
  if (bleeding === null) return [{ word: "Bleeding risk", says: NO_ROW }];
  const { rows, liver, accessAtRisk } = bleeding;
  return [
    rowWords("Bleeding risk", bleeding, () =>
      [ifAny(liver, (words) => words), ifAny(accessAtRisk, (words) => words)].filter(Boolean).join("; "),
    ),
    ...rows.flatMap((row) => [
      rowWords(
        `Bleeding risk, ${row.class}`,
        row,
        ({ inrAtMost, plateletsAtLeast, labs }) =>
          `guideline: INR at most ${inrAtMost.from} to ${inrAtMost.to}, platelets at least ${plateletsAtLeast} x 10^9/L${ifAny(labs, (words) => `; ${words}`)}`,
      ),
      ...eachRow(`Bleeding risk, ${row.class}`, row.acts, {
        of: ({ act }) => act,
        says: () => "in this class",
      }),
    ]),
  ];
}
