import type { ProtocolRow } from "#shared/protocol/interval-row.ts";
import type { RowTurn } from "#shared/tube/kind/define.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import { ifAny, NO_ROW } from "#shared/words/protocol/row-words.ts";

/** A row of intervals as the page tells it, cell by cell; days are days from the start of a clock. */
export type IntervalWords = Readonly<
  Record<
    | "row"
    | "asks"
    | "earliest"
    | "target"
    | "latest"
    | "hardLatest"
    | "immature"
    | "notRemoved"
    | "further"
    | "source",
    string
  >
>;

const days = (count: number | null): string => (count === null ? NO_ROW : String(count));

const turnWords: Readonly<Record<RowTurn, string>> = {
  any: "",
  first: "the first exchange of a tract",
  later: "every later exchange",
};

/** An age of the tract by the way that it takes, where the row has one for each, else the row's own. */
function byRoute(row: ProtocolRow, age: "immatureUnder" | "notRemovedBefore"): string {
  const ways = row.byRoute.map((way) => `${way[age]} ${way.route}`).join(", ");
  const own = row[age];
  if (ways === "") return days(own);
  return own === null ? ways : `${ways}, else ${own}`;
}

/** Whose row it is, where its name does not say so. */
const kindWords = ({ id, kind }: ProtocolRow): string =>
  id.startsWith(kindOf(kind).name) ? "" : `of a ${kindOf(kind).name}`;

/** Every figure and every word of an interval row. "No row" is not zero, and is said. */
export function intervalWords(row: ProtocolRow): IntervalWords {
  const { id, asks, source, note, factor, turn } = row;
  const slow = ifAny(row.immatureIfSlowUnder, (age) => `, ${age} if slow to heal`);
  const further = [
    note ?? "",
    kindWords(row),
    ifAny(factor, (what) => `with ${what}`),
    turnWords[turn],
    ifAny(row.notExchangedBefore, (age) => `not exchanged under ${age}`),
    ifAny(row.matureFrom, (age) => `mature from ${age}`),
    ifAny(row.inHospitalUnder, (age) => `in hospital under ${age}`),
  ];
  return {
    row: id,
    asks,
    earliest: days(row.earliest),
    target: days(row.target),
    latest: days(row.latest),
    hardLatest: days(row.hardLatest),
    immature: `${byRoute(row, "immatureUnder")}${slow}`,
    notRemoved: byRoute(row, "notRemovedBefore"),
    further: further.filter(Boolean).join("; "),
    source,
  };
}
