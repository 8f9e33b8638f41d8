import type { Protocol } from "#shared/protocol/protocol.ts";
import { addressOf, addressParts } from "#shared/protocol/rows/address.ts";
import { type IntervalWords, intervalWords } from "#shared/words/protocol/interval-rows.ts";
import { otherRows } from "#shared/words/protocol/other-rows.ts";
import { NO_ROW, type RowWords } from "#shared/words/protocol/row-words.ts";

/** One row that a draft tells otherwise than what stands. `stood` is null of a row that is added, `drafted` of one that is dropped. */
export type RowDifference = {
  /** The table of the page Protocol in which it stands. */
  readonly head: string;
  readonly row: string;
  readonly stood: string | null;
  readonly drafted: string | null;
  /** Where it can be changed, or filled again; null where its list has it no more. */
  readonly address: string | null;
};

/** A line of either version: `cells` are compared one by one, and only those that differ are told of a row that both have. */
type Line = {
  readonly word: string;
  readonly address: string;
  readonly cells: readonly (readonly [label: string, says: string])[];
};

const labels = {
  asks: "asks for",
  earliest: "earliest",
  target: "target",
  latest: "latest",
  hardLatest: "hard latest",
  immature: "immature under",
  notRemoved: "not removed before",
  further: "also",
  source: "source",
} as const satisfies Readonly<Record<Exclude<keyof IntervalWords, "row">, string>>;

type Told = keyof typeof labels;

const intervalLine = (words: IntervalWords): Line => ({
  word: words.row,
  address: addressOf("intervals", words.row),
  cells: (Object.keys(labels) as Told[]).map((name) => [labels[name], words[name] || NO_ROW]),
});

const otherLine = ({ word, says, address }: RowWords): Line => ({ word, address, cells: [["", says]] });

type Table = { readonly head: string; readonly lines: readonly Line[] };

const tablesOf = (protocol: Protocol): readonly Table[] => [
  { head: "Intervals, in days", lines: protocol.intervals.map((row) => intervalLine(intervalWords(row))) },
  ...otherRows(protocol).map(({ head, rows }) => ({
    head,
    // That there is none is no row: what was dropped or added tells it.
    lines: rows.filter(({ says }) => says !== NO_ROW).map(otherLine),
  })),
];

/** What a version says of one row, line by line, in the words of the page Protocol; nothing where it has no such row. */
export const rowSays = (protocol: Protocol, address: string): readonly { word: string; says: string }[] =>
  tablesOf(protocol)
    .flatMap(({ lines }) => lines)
    .filter((line) => line.address === address)
    .map((line) => ({ word: line.word, says: allOf(line) }));

const cellWords = ([label, says]: readonly [string, string]): string =>
  label === "" ? says : `${label} ${says}`;

const allOf = ({ cells }: Line): string =>
  cells
    .filter(([label, says]) => label === "" || says !== NO_ROW)
    .map(cellWords)
    .join("; ");

/** Lines by their word; of two with one word, the second by itself. */
function byWord(lines: readonly Line[]): ReadonlyMap<string, Line> {
  const known = new Map<string, Line>();
  for (const line of lines) {
    let key = line.word;
    while (known.has(key)) key = `${key} again`;
    known.set(key, line);
  }
  return known;
}

function pairDifference(head: string, was: Line, is: Line): readonly RowDifference[] {
  const differ = is.cells.flatMap(([label, says], at): readonly (readonly [string, string, string])[] => {
    const before = was.cells[at]?.[1] ?? NO_ROW;
    return before === says ? [] : [[label, before, says]];
  });
  if (differ.length === 0) return [];
  const stood = differ.map(([label, before]) => cellWords([label, before])).join("; ");
  const drafted = differ.map(([label, , says]) => cellWords([label, says])).join("; ");
  return [{ head, row: is.word, stood, drafted, address: is.address }];
}

/** The same rows one after another otherwise: which of them is met first on a page, and on paper, is told too. */
function orderDifference(
  head: string,
  was: readonly string[],
  is: readonly string[],
): readonly RowDifference[] {
  const stood = was.filter((word) => is.includes(word)).join(", ");
  const drafted = is.filter((word) => was.includes(word)).join(", ");
  return stood === drafted ? [] : [{ head, row: "Order of the rows", stood, drafted, address: null }];
}

/** A row of a list leaves no place behind; one that stands alone can be filled again. */
const placeLeft = ({ address }: Line): string | null => (addressParts(address).key === null ? address : null);

function tableDifferences(stands: Table, draft: Table): readonly RowDifference[] {
  const { head } = draft;
  const was = byWord(stands.lines);
  const is = byWord(draft.lines);
  const told = [...is].flatMap(([key, line]): readonly RowDifference[] => {
    const before = was.get(key);
    if (before !== undefined) return pairDifference(head, before, line);
    return [{ head, row: line.word, stood: null, drafted: allOf(line), address: line.address }];
  });
  const dropped = [...was].flatMap(([key, line]): readonly RowDifference[] =>
    is.has(key)
      ? []
      : [{ head, row: line.word, stood: allOf(line), drafted: null, address: placeLeft(line) }],
  );
  return [...told, ...dropped, ...orderDifference(head, [...was.keys()], [...is.keys()])];
}

/** Every row that a draft tells otherwise than what stands, in the words of the page Protocol; none where both have the same rows. */
export function protocolChanges(stands: Protocol, draft: Protocol): readonly RowDifference[] {
  const before = tablesOf(stands);
  return tablesOf(draft).flatMap((table) => {
    const was = before.find(({ head }) => head === table.head);
    return was === undefined ? [] : tableDifferences(was, table);
  });
}
