import { dayAt, type Zone } from "#shared/day/instant.ts";
import { printDate, printInstant } from "#shared/day/print-day.ts";
import type {
  ChartAspirate,
  ChartChange,
  ChartFacts,
  ChartReading,
} from "#shared/output/chart/chart-facts.ts";
import { type ChartFrame, rateIn } from "#shared/output/chart/chart-frame.ts";
import type { ChartLimit } from "#shared/output/chart/chart-limit.ts";
import { RECENT_DAYS } from "#shared/output/chart/recent-chart.ts";
import { type Microlitres, microlitres } from "#shared/output/microlitre.ts";
import { HOUR_MS, type MlPer24h } from "#shared/output/rate.ts";
import { printLength } from "#shared/size/print-length.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { Character } from "#shared/tube/vocabulary.ts";
import { incompleteWords, printRate, printVolume } from "#shared/words/output.ts";

/** The letters over a bar; the key beneath the chart and the table spell them out. */
export const characterLetters = {
  serous: "S",
  serosanguineous: "SS",
  bloody: "Bl",
  purulent: "P",
  bilious: "Bi",
  feculent: "F",
  chylous: "Ch",
  clear: "C",
  "urine-like": "U",
  food: "Fo",
  debris: "D",
  clots: "Cl",
} as const satisfies Record<Character, string>;

export const lettersOf = (characters: readonly Character[]): string =>
  characters.map((character) => characterLetters[character]).join(" ");

/** "P purulent, S serous": only what stands over a bar. */
export const letterKey = (readings: readonly ChartReading[]): string =>
  [...new Set(readings.flatMap(({ characters }) => characters))]
    .map((character) => `${characterLetters[character]} ${character}`)
    .join(", ");

/** What came out and of it the part that does not count. */
function drainedWords(drained: Microlitres | null, net: Microlitres | null): string {
  if (drained === null) return "Volume unknown";
  const flush = net === null ? 0 : drained - net;
  return flush === 0
    ? `${printVolume(drained)} came out`
    : `${printVolume(drained)} came out, ${printVolume(microlitres(flush))} of it flush`;
}

/** What a bar shows, in three lines: its time; its net, or why that cannot be told; what came out and how it looked. */
export function chartReadingLines(reading: ChartReading, zone: Zone): readonly [string, string, string] {
  const { from, to, net, drained, because, characters } = reading;
  const looks = characters.length === 0 ? "" : `; ${characters.join(", ")}`;
  return [
    `${printInstant(from, zone)} to ${printInstant(to, zone)}`,
    net === null
      ? because.map((reason) => incompleteWords[reason]).join(" ")
      : `Net ${printVolume(net)}, ${printRate(rateIn(reading, net) as MlPer24h)}.`,
    `${drainedWords(drained, net)}${looks}.`,
  ];
}

export const chartAspirateLine = ({ at, ul }: ChartAspirate, zone: Zone): string =>
  `${printInstant(at, zone)}: ${ul === null ? "an unknown volume" : printVolume(ul)} drawn off at the procedure. No output.`;

export function limitWords({ means, underMl }: ChartLimit): string {
  const under = `under ${printRate(underMl as MlPer24h)}`;
  return means === "low day" ? `row: low day ${under}` : `row: alarm ${under}`;
}

/** The same where the axis beside it has the unit. */
export const limitLabel = ({ means, underMl }: ChartLimit): string => `row: ${means} under ${underMl}`;

const resizing: readonly EventKind[] = ["upsized", "downsized"];
const renewing: readonly EventKind[] = [...resizing, "exchanged", "salvaged", "new puncture"];

/** "12 F from 14 Nov", "capped 16 Nov": a size is known of the last renewal alone. */
export function changeWords(change: ChartChange, { changes, size, zone }: ChartFacts): string {
  const on = printDate(dayAt(change.at, zone));
  const isLast = changes.findLast(({ kind }) => renewing.includes(kind))?.at === change.at;
  return isLast && size !== null && resizing.includes(change.kind)
    ? `${printLength(size, "F")} from ${on}`
    : `${change.kind} ${on}`;
}

const counted = (readings: number): string => `${readings} ${readings === 1 ? "reading" : "readings"}`;

const unplacedWords = (readings: number): string => `${counted(readings)} without a place in time, not drawn`;

/** The whole chart in one line, for those who hear it. */
export function chartSummary({ readings, aspirates, unplaced, span, limit, zone }: ChartFacts): string {
  if (span === null) return unplaced > 0 ? unplacedWords(unplaced) : "No reading yet.";
  const rates = readings.flatMap((reading) => (reading.net === null ? [] : [rateIn(reading, reading.net)]));
  const reach =
    rates.length === 0
      ? "no net known"
      : `net ${printRate(Math.min(...rates) as MlPer24h)} to ${printRate(Math.max(...rates) as MlPer24h)}`;
  return [
    `${counted(readings.length)} up to ${printInstant(span.to, zone)}`,
    reach,
    ...(aspirates.length === 0 ? [] : ["what was drawn off at the procedure told apart"]),
    ...(unplaced === 0 ? [] : [unplacedWords(unplaced)]),
    ...(limit === null ? [] : [limitWords(limit)]),
  ].join("; ");
}

const noneRecent = `no reading in ${RECENT_DAYS} days`;

/** How small charts are read, beneath their list. */
export const smallChartKey =
  "Small charts: solid net, outlined flush, hatched no entry; dashed line: the clinic's row, where it has one.";

/** The same of a small chart, which shows no more than its frame. */
export function recentSummary(facts: ChartFacts, frame: ChartFrame): string {
  const readings = facts.readings.filter(({ to }) => to > frame.from);
  if (readings.length === 0 && facts.unplaced === 0) return noneRecent;
  return chartSummary({ ...facts, readings, aspirates: facts.aspirates.filter(({ at }) => at > frame.from) });
}

/** A rate of less than an hour would be none. */
const lastNet = (reading: ChartReading, net: Microlitres): string =>
  reading.to - reading.from < HOUR_MS
    ? `${printVolume(net)} in under 1 h`
    : printRate(rateIn(reading, net) as MlPer24h);

/** What was logged last, beside a small chart: "last: 22 mL/24 h, 28 Nov". */
export function lastReadingWords({ span, readings, unplaced, zone }: ChartFacts): string {
  const [first, ...rest] = readings;
  if (first === undefined && unplaced > 0) return unplacedWords(unplaced);
  if (first === undefined) return span === null ? "no reading yet" : noneRecent;
  const last = rest.reduce((newest, one) => (one.to > newest.to ? one : newest), first);
  const net = last.net === null ? "cannot tell" : lastNet(last, last.net);
  return `last: ${net}, ${printDate(dayAt(last.to, zone))}`;
}
