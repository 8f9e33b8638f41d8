import type { OutputRows } from "#shared/protocol/output-rows.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import {
  eachRow,
  ifAny,
  kindsOf,
  NO_ROW,
  type RowWords,
  rowWords,
} from "#shared/words/protocol/row-words.ts";

const lowNet = ({ lowNetMl, lowDays }: { readonly lowNetMl: number; readonly lowDays: number }): string =>
  `net under ${lowNetMl} mL/24 h on ${lowDays} complete days running`;

const hours = (row: { readonly hours: number }): string => `${row.hours} h`;

/** Rows that alarm. */
const alarming = (rows: OutputRows): readonly RowWords[] => [
  ...eachRow("Dry", rows.dry, {
    of: kindsOf,
    says: ({ hours: dry, level, onlyWayOut }) =>
      `nothing for ${dry} h: ${level}${ifAny(onlyWayOut, (faster) => `; the only way out, or no urine by any route: ${faster}`)}`,
  }),
  ...eachRow("Low", rows.low, {
    of: kindsOf,
    says: ({ underMlPer24h, asks }) =>
      [
        ifAny(underMlPer24h, (ml) => `under ${ml} mL/24 h, unless a usual level is accepted`),
        ifAny(asks, (words) => words),
      ]
        .filter(Boolean)
        .join("; "),
  }),
  ...eachRow("High", rows.high, {
    of: kindsOf,
    says: ({ overMlPer24h, fromDay }) =>
      `over ${overMlPer24h} mL/24 h${ifAny(fromDay, (day) => `, from day ${day}`)}`,
  }),
  rowWords(
    "Sudden drop",
    rows.suddenDrop,
    ({ overPercent, underMedianOfDays, andMl, notInFirstHours }) =>
      `over ${overPercent} % under the median of the last ${underMedianOfDays} complete days, and at least ${andMl} mL less; not in the first ${notInFirstHours} h after placement or relief`,
  ),
  rowWords(
    "New fluid",
    rows.newFluid,
    ({ level, pinkUrineHours }) =>
      `one that this tube is not expected to drain: ${level}; pink urine under ${pinkUrineHours} h after a procedure is asked again the next day`,
  ),
];

/** Rows of the numeric part of a removal review, beside the general one. */
const criterion = (rows: OutputRows): readonly RowWords[] => [
  ...eachRow("Low output instead", rows.lowNetInstead, { of: kindsOf, says: lowNet }),
  rowWords("The last complete day ends within", rows.lastCompleteDayHours, hours),
  rowWords("The clinical state is no older than", rows.clinicalStateHours, hours),
  rowWords("Fever", rows.fever, ({ fromC }) => `from ${fromC} °C on`),
  rowWords(
    "Plateau",
    rows.plateau,
    ({ overMlPer24h, days, ofLast }) =>
      `over ${overMlPer24h} mL/24 h on ${days} of the last ${ofLast} covered days`,
  ),
  rowWords("Flush ordered and not recorded", rows.flushNotRecorded, ({ says }) => says),
  rowWords(
    `Chest tube${ifAny(rows.chestTube, (row) => `: ${kindsOf(row)}`)}`,
    rows.chestTube,
    ({ noAirLeakHours, underMlPer24h, and }) =>
      `no air leak for ${noAirLeakHours} h, under ${underMlPer24h} mL/24 h, ${and}`,
  ),
  ...eachRow("Sessions", rows.sessions, {
    of: kindsOf,
    says: ({ lowMl, lowSessions, and, ceilingMl, stopsOn }) =>
      [
        ifAny(lowMl, (ml) => `numeric part: under ${ml} mL`),
        ifAny(lowSessions, (count) => `on ${count} sessions running`),
        ifAny(and, (words) => words),
        `at most ${ceilingMl} mL a session`,
        stopsOn,
      ]
        .filter(Boolean)
        .join("; "),
  }),
];

/** Every row by which output is read. */
export function outputRowWords({ output, outputRows: rows }: Protocol): readonly RowWords[] {
  const general = [
    rowWords("Low output", output, lowNet),
    rowWords(
      "Flush does not come back",
      output,
      ({ flushDoesNotComeBackMl }) => `net under ${flushDoesNotComeBackMl} mL/24 h`,
    ),
  ];
  if (rows === null) return [...general, { word: "Other rows of output", says: NO_ROW }];
  return [
    ...general,
    ...criterion(rows),
    ...alarming(rows),
    rowWords(
      "A question about a volume",
      rows.plausibility,
      ({ overMlPer24h, overTimesMedian, andMoreMl }) =>
        `over ${overMlPer24h} mL/24 h, or over ${overTimesMedian} times the week's median and over ${andMoreMl} mL more`,
    ),
  ];
}
