import type { Protocol } from "#shared/protocol/protocol.ts";
import { dueOutWords } from "#shared/words/anchors-out.ts";
import { kindsOf } from "#shared/words/protocol/row-names.ts";
import { eachRow, ifAny, type RowWords, rowWords } from "#shared/words/protocol/row-words.ts";

/** What goes in: flush as ordered, water in a balloon, the place of a tip, and what comes out at the skin. */
export const fluidRowWords = ({ flush, balloon, tips, anchors }: Protocol): readonly RowWords[] => [
  ...eachRow("flush", flush, ({ order }) => order),
  rowWords(
    "balloon",
    balloon,
    ({ first, every, lossOverMl, alarmAfter, fill }) =>
      `first looked at on day ${first.from} to ${first.to}, then every ${every} days; a loss over ${lossOverMl} mL is a question, ${alarmAfter} in a row an alarm; filled with ${fill}`,
  ),
  ...eachRow(
    "tips",
    tips,
    ({ within, again }) =>
      `confirmed within ${within} days${ifAny(again, (days) => `, and again after ${days}`)}`,
  ),
  ...eachRow("anchors", anchors, dueOutWords),
];

/** What is told or seen and cannot wait, and what is done when a tube is out. */
export const urgentRowWords = ({ redFlags, tubeOut }: Protocol): readonly RowWords[] => [
  ...eachRow("redFlags", redFlags, ({ level, says, untilReached, raisedBy }) => {
    const by = raisedBy.map(({ trouble, grave }) => (grave ? `${trouble}, grave` : trouble));
    return [
      `${level}: ${says}`,
      ifAny(untilReached, (act) => `until reached: ${act}`),
      by.length === 0 ? "" : `raised by an entry: ${by.join("; ")}`,
    ]
      .filter(Boolean)
      .join("; ");
  }),
  ...eachRow(
    "tubeOut",
    tubeOut,
    ({ immature, mature, untilReached, out, ...row }) =>
      `${kindsOf(row)}, ${out}: immature tract: ${immature}; mature: ${mature}; until reached: ${untilReached}`,
  ),
];

/** Classes of bleeding risk, for discussion. */
export function bleedingRowWords({ bleeding }: Protocol): readonly RowWords[] {
  if (bleeding === null) return [rowWords("bleeding", bleeding, () => "")];
  const { rows, liver, accessAtRisk } = bleeding;
  return [
    rowWords("bleeding", bleeding, () =>
      [ifAny(liver, (words) => words), ifAny(accessAtRisk, (words) => words)].filter(Boolean).join("; "),
    ),
    ...rows.flatMap((row) => [
      rowWords(
        { of: "bleeding", word: `Bleeding risk, ${row.class}` },
        row,
        ({ inrAtMost, plateletsAtLeast, labs }) =>
          `guideline: INR at most ${inrAtMost.from} to ${inrAtMost.to}, platelets at least ${plateletsAtLeast} x 10^9/L${ifAny(labs, (words) => `; ${words}`)}`,
      ),
      ...row.acts.map((act) =>
        rowWords(
          { of: "bleeding", word: `Bleeding risk, ${row.class}: ${act.act}` },
          act,
          () => "in this class",
        ),
      ),
    ]),
  ];
}
