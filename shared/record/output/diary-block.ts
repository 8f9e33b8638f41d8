import { otherFluids } from "#shared/output/reading.ts";
import type { DiaryCell, DiaryRow } from "#shared/record/output/diary-cells.ts";
import { seenIn } from "#shared/record/output/diary-seen.ts";

/** A pasted block as rows of a diary, and the lines that hold no figure: said, so that nothing is lost unseen. */
export type DiaryBlock = { readonly rows: readonly DiaryRow[]; readonly leftOut: readonly string[] };

/** `seen`: without a heading, whatever follows the volumes; `other`: under a heading that says nothing of a reading. */
type Column = DiaryCell | "seen" | "other";

const MONTH = "(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\\.?";
const DAY = [
  `(?:(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*[ ,]+)?\\d{1,2}(?:st|nd|rd|th)?[ .-]*${MONTH}(?:[ .-]*\\d{4})?`,
  `(?:(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*[ ,]+)?${MONTH}[ .-]*\\d{1,2}(?:st|nd|rd|th)?(?:,? \\d{4})?`,
  "\\d{4}-\\d{1,2}-\\d{1,2}",
  "\\d{1,2}[./]\\d{1,2}[./]\\d{4}",
  "today|yesterday",
].join("|");
const TIME = "\\d{1,2}:\\d{2}(?: ?[ap]m)?|\\d{1,2} ?[ap]m";
/** A day, a time, or both, at the beginning of a line or as all of a cell. */
const WHEN = new RegExp(`^(?:(${DAY})(?:[ ,]+(?:at )?)?)?(${TIME})?(?!\\w|:\\d)`, "i");
const FIGURE = /^(?:[~<]? ?[-−]?[.,]?\d|\?$|none$)/i;
const VOLUME =
  /^(?:\?|[~<]? ?[-−]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?: ?x ?\d+)?(?: ?(?:mls?|cc|l|oz|millilit\w*|lit\w*|ounces?))?)(?![\w.])/i;
const BETWEEN = /^(?:[\s,;:/|]|-(?!\d)|(?:drained|drain|out|output|flush(?:ed)?|with|in|given|and|of)\b)+/i;

const columnWords: readonly (readonly [Column, RegExp])[] = [
  ["leak", /leak/i],
  ["otherIn", new RegExp(`other (?:fluid|in\\b)|${otherFluids.join("|")}`, "i")],
  ["flush", /flush|given|put in|\bin\b/i],
  ["when", /time|date|day|when|at\b/i],
  ["drained", /drain|out|volume|amount|ml\b|emptied/i],
  ["characters", /character|colou?r|look|fluid/i],
];

type When = { readonly day: string; readonly time: string; readonly length: number };

/** The day and the time with which a text begins; both empty where it does not begin so. */
function whenOf(text: string): When {
  const [all = "", day = "", time = ""] = WHEN.exec(text) ?? [];
  return { day, time, length: all.length };
}

const isWhen = (cell: string): boolean => {
  const { day, time, length } = whenOf(cell);
  return day + time !== "" && cell.slice(length).trim() === "";
};

const tidy = (cell: string): string =>
  cell
    .trim()
    .replace(/^"(.*)"$/, "$1")
    .trim();

/** How lines are cut into cells: by one mark throughout, or null, as they are spoken. */
type Mark = "\t" | ";" | "," | null;

/** What the columns hold by a line of headings; null where it names no volume. */
function columnsIn(cells: readonly string[]): readonly Column[] | null {
  const columns = cells.map((cell) => columnWords.find(([, word]) => word.test(cell))?.[0] ?? "other");
  return columns.includes("drained") ? columns : null;
}

const holdsFigures = (cells: readonly string[]): boolean =>
  cells.some((cell) => FIGURE.test(cell) || whenOf(cell).length > 0);

/** Commas cut a block whose headings they cut; elsewhere they may stand in a figure. */
function markOf(lines: readonly string[]): Mark {
  for (const mark of ["\t", ";"] as const) if (lines.some((line) => line.includes(mark))) return mark;
  const isHeading = (line: string): boolean => {
    const cells = line.split(",");
    return cells.length > 1 && !holdsFigures(cells.map(tidy)) && columnsIn(cells) !== null;
  };
  return lines.some(isHeading) ? "," : null;
}

type Line = { readonly cells: readonly string[]; readonly columns: readonly Column[] | null };

const spokenColumns: readonly Column[] = ["when", "drained", "flush"];

/** A line as it is spoken: "8:00: 35 ml, flush 10, bilious". Words in the place of a volume stay there, to be asked about. */
function spoken(line: string): Line {
  const { length } = whenOf(line);
  const when = line.slice(0, length);
  const figures: string[] = [];
  let rest = line.slice(length).replace(BETWEEN, "");
  while (figures.length < 2) {
    const [volume = ""] = VOLUME.exec(rest) ?? [];
    if (volume === "") break;
    figures.push(volume);
    rest = rest.slice(volume.length).replace(BETWEEN, "");
  }
  const [drained = rest, flush = ""] = figures;
  const seen = figures.length === 0 ? [] : rest.split(/[,;]\s+/);
  return { cells: [when, drained, flush, ...seen].map(tidy), columns: spokenColumns };
}

/** A line as cells; those of a spoken one have their places. */
function lineOf(line: string, mark: Mark): Line {
  if (mark !== null) return { cells: line.split(mark).map(tidy), columns: null };
  const typed = line.trim();
  const { length } = whenOf(typed);
  const rest = typed.slice(length);
  if (length > 0 && rest.startsWith(","))
    return { cells: [typed.slice(0, length), ...rest.slice(1).split(",").map(tidy)], columns: null };
  return length > 0 || FIGURE.test(typed) ? spoken(typed) : { cells: [typed], columns: null };
}

/** The columns of a line without headings: cells that are a time, or blank before one, then drained, flush and what it looked like. */
function columnsByPlace(cells: readonly string[]): readonly Column[] {
  const firstOther = cells.findIndex((cell) => cell !== "" && !isWhen(cell));
  const run = cells.slice(0, firstOther < 0 ? cells.length : firstOther);
  const times = run.findLastIndex(isWhen) + 1;
  const leading = times > 0 ? times : run.length;
  const places: readonly Column[] = ["drained", "flush"];
  return cells.map((_, index) => (index < leading ? "when" : (places[index - leading] ?? "seen")));
}

function rowOf(cells: readonly string[], columns: readonly Column[]): DiaryRow {
  const of = (...wanted: readonly Column[]): readonly string[] =>
    cells.filter((cell, index) => cell !== "" && wanted.includes(columns[index] ?? "seen"));
  const seen = seenIn(of("seen"));
  return {
    when: of("when").join(" "),
    drained: of("drained").join(" "),
    flush: of("flush").join(" "),
    characters: [...of("characters", "other"), ...seen.characters].join(", "),
    leak: [...of("leak"), ...seen.leak].join(", "),
    otherIn: [...of("otherIn"), ...seen.otherIn].join(", "),
  };
}

/** Lines without a figure: the headings are the last that can be, before the first row; the others are left out and said. */
function partedByHeadings(lines: readonly Line[], texts: readonly string[]) {
  const first = lines.findIndex(({ cells }) => holdsFigures(cells));
  const columnsOf = (index: number): readonly Column[] | null => columnsIn(lines[index]?.cells ?? []);
  const heads = texts.flatMap((_, index) => (index < first && columnsOf(index) !== null ? [index] : []));
  const heading = heads.at(-1);
  return {
    headings: heading === undefined ? null : columnsOf(heading),
    figures: lines.filter(({ cells }) => holdsFigures(cells)),
    leftOut: texts.filter((_, index) => index !== heading && !holdsFigures(lines[index]?.cells ?? [])),
  };
}

const isDayAlone = ({ when, ...others }: DiaryRow): boolean => {
  const { day, time } = whenOf(when);
  return Object.values(others).every((text) => text === "") && day !== "" && time === "";
};

/**
 * Rows of a diary from what was pasted: a block of a spreadsheet or a text message, line by line. Columns go by their headings, or else
 * by their place: time, drained, flush, and after these what was seen, leaked and went in besides. Blank lines fall away; a day that stands alone is the day of the line after it;
 * a line of nothing but figures has no time. What cannot be read stands in its cell as it was pasted.
 */
export function readDiaryBlock(pasted: string): DiaryBlock {
  const texts = pasted.split(/\r?\n|\r/).filter((line) => /[^\s;,"]/.test(line));
  const mark = markOf(texts);
  const { headings, figures, leftOut } = partedByHeadings(
    texts.map((text) => lineOf(text, mark)),
    texts,
  );
  const rows: DiaryRow[] = [];
  let day = "";
  for (const { cells, columns } of figures) {
    const row = rowOf(cells, columns ?? headings ?? columnsByPlace(cells));
    if (isDayAlone(row)) {
      day = row.when;
      continue;
    }
    rows.push({ ...row, when: whenOf(row.when).day === "" ? `${day} ${row.when}`.trim() : row.when });
    day = "";
  }
  return { rows, leftOut: [...leftOut.map((line) => line.trim()), day].filter((line) => line !== "") };
}
