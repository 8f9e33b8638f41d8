import type { OutputRows } from "#shared/protocol/output-rows.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { kindsOf } from "#shared/words/protocol/row-names.ts";
import { eachRow, ifAny, noRows, type RowWords, rowWords } from "#shared/words/protocol/row-words.ts";

const lowNet = ({ lowNetMl, lowDays }: { readonly lowNetMl: number; readonly lowDays: number }): string =>
  `net under ${lowNetMl} mL/24 h on ${lowDays} complete days running`;

const hours = (row: { readonly hours: number }): string => `${row.hours} h`;

/** Rows that alarm. */
const alarming = (rows: OutputRows): readonly RowWords[] => [
  ...eachRow(
    "outputRows.dry",
    rows.dry,
    ({ hours: dry, level, onlyWayOut }) =>
      `nothing for ${dry} h: ${level}${ifAny(onlyWayOut, (faster) => `; the only way out, or no urine by any route: ${faster}`)}`,
  ),
  ...eachRow("outputRows.low", rows.low, ({ underMlPer24h, asks }) =>
    [
      ifAny(underMlPer24h, (ml) => `under ${ml} mL/24 h, unless a usual level is accepted`),
      ifAny(asks, (words) => words),
    ]
      .filter(Boolean)
      .join("; "),
  ),
  ...eachRow(
    "outputRows.high",
    rows.high,
    ({ overMlPer24h, fromDay }) =>
      `over ${overMlPer24h} mL/24 h${ifAny(fromDay, (day) => `, from day ${day}`)}`,
  ),
  rowWords(
    "outputRows.suddenDrop",
    rows.suddenDrop,
    ({ overPercent, underMedianOfDays, andMl, notInFirstHours }) =>
      `over ${overPercent} % under the median of the last ${underMedianOfDays} complete days, and at least ${andMl} mL less; not in the first ${notInFirstHours} h after placement or relief`,
  ),
  rowWords(
    "outputRows.newFluid",
    rows.newFluid,
    ({ level, pinkUrineHours }) =>
      `one that this tube is not expected to drain: ${level}; pink urine under ${pinkUrineHours} h after a procedure is asked again the next day`,
  ),
];

/** Rows of the numeric part of a removal review, beside the general one. */
const criterion = (rows: OutputRows): readonly RowWords[] => [
  ...eachRow("outputRows.lowNetInstead", rows.lowNetInstead, lowNet),
  rowWords("outputRows.lastCompleteDayHours", rows.lastCompleteDayHours, hours),
  rowWords("outputRows.clinicalStateHours", rows.clinicalStateHours, hours),
  rowWords("outputRows.fever", rows.fever, ({ fromC }) => `from ${fromC} °C on`),
  rowWords(
    "outputRows.plateau",
    rows.plateau,
    ({ overMlPer24h, days, ofLast }) =>
      `over ${overMlPer24h} mL/24 h on ${days} of the last ${ofLast} covered days`,
  ),
  rowWords("outputRows.flushNotRecorded", rows.flushNotRecorded, ({ says }) => says),
  rowWords(
    { of: "outputRows.chestTube", word: `Chest tube${ifAny(rows.chestTube, (row) => `: ${kindsOf(row)}`)}` },
    rows.chestTube,
    ({ noAirLeakHours, underMlPer24h, and }) =>
      `no air leak for ${noAirLeakHours} h, under ${underMlPer24h} mL/24 h, ${and}`,
  ),
  ...eachRow("outputRows.sessions", rows.sessions, ({ lowMl, lowSessions, and, ceilingMl, stopsOn }) =>
    [
      ifAny(lowMl, (ml) => `numeric part: under ${ml} mL`),
      ifAny(lowSessions, (count) => `on ${count} sessions running`),
      ifAny(and, (words) => words),
      `at most ${ceilingMl} mL a session`,
      stopsOn,
    ]
      .filter(Boolean)
      .join("; "),
  ),
];

/** Every row by which output is read. */
export function outputRowWords({ output, outputRows: rows }: Protocol): readonly RowWords[] {
  const general = [
    rowWords("output", output, lowNet),
    rowWords(
      { of: "output", word: "Flush does not come back" },
      output,
      ({ flushDoesNotComeBackMl }) => `net under ${flushDoesNotComeBackMl} mL/24 h`,
    ),
  ];
  if (rows === null) return [...general, noRows("outputRows", "Other rows of output")];
  return [
    ...general,
    ...criterion(rows),
    ...alarming(rows),
    rowWords(
      "outputRows.plausibility",
      rows.plausibility,
      ({ overMlPer24h, overTimesMedian, andMoreMl }) =>
        `over ${overMlPer24h} mL/24 h, or over ${overTimesMedian} times the week's median and over ${andMoreMl} mL more`,
    ),
  ];
}
