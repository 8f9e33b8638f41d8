import type { RefusalCode } from "#shared/errors/codes.ts";
import type { RefusalArgs } from "#shared/errors/refusal.ts";
import type { ProtocolRow } from "#shared/protocol/interval-row.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { addressOf } from "#shared/protocol/rows/address.ts";
import type { Nonsense } from "#shared/protocol/rows/nonsense.ts";

type Said = {
  readonly code: RefusalCode;
  readonly field: keyof ProtocolRow | `byRoute.${number}.route`;
  readonly args?: RefusalArgs;
};

/** Days of a window in the order in which they come; what is "no row" is passed over. */
const window = [
  ["earliest", "earliest"],
  ["target", "target"],
  ["latest", "latest"],
  ["hardLatest", "hard latest"],
] as const;

function windowSense(row: ProtocolRow): readonly Said[] {
  const days = window.flatMap(([field, word]) => {
    const figure = row[field];
    return figure === null ? [] : [{ field, word, figure }];
  });
  return days.flatMap((one, at): readonly Said[] => {
    const next = days[at + 1];
    if (next === undefined || one.figure <= next.figure) return [];
    const args = { one: one.word, days: one.figure, other: next.word, limit: next.figure };
    return [{ code: "window-out-of-order", field: one.field, args }];
  });
}

/** Ages of a tract: it is mature no sooner than it stops being immature, and slow to heal means later. */
function ageSense({ immatureUnder, matureFrom, immatureIfSlowUnder }: ProtocolRow): readonly Said[] {
  if (immatureUnder === null) return [];
  const said: Said[] = [];
  if (matureFrom !== null && matureFrom < immatureUnder)
    said.push({
      code: "mature-before-immature",
      field: "matureFrom",
      args: { days: matureFrom, limit: immatureUnder },
    });
  if (immatureIfSlowUnder !== null && immatureIfSlowUnder < immatureUnder)
    said.push({
      code: "slow-before-usual",
      field: "immatureIfSlowUnder",
      args: { days: immatureIfSlowUnder, limit: immatureUnder },
    });
  return said;
}

const routeSense = ({ byRoute }: ProtocolRow): readonly Said[] =>
  byRoute.flatMap(({ route }, at): readonly Said[] =>
    byRoute.findIndex((other) => other.route === route) === at
      ? []
      : [{ code: "row-says-twice", field: `byRoute.${at + 1}.route`, args: { text: route } }],
  );

/** A row for a factor replaces the kind's own where that is longer, so there has to be one; two rows of the same would not both be found. */
function besideOthers(row: ProtocolRow, others: readonly ProtocolRow[]): readonly Said[] {
  const { kind, factor, turn } = row;
  const said: Said[] = [];
  const same = others.find((other) => other.kind === kind && other.factor === factor && other.turn === turn);
  if (same !== undefined) said.push({ code: "interval-row-twice", field: "kind", args: { row: same.id } });
  const isPlain = (other: ProtocolRow): boolean =>
    other.kind === kind &&
    other.factor === null &&
    (turn === "any" || other.turn === "any" || other.turn === turn);
  if (factor !== null && !others.some(isPlain))
    said.push({ code: "plain-row-missing", field: "factor", args: { row: row.id, kind, factor } });
  return said;
}

/** What speaks against the rows of intervals, each by itself and beside one another. */
export const intervalSense = ({ intervals }: Protocol): readonly Nonsense[] =>
  intervals.flatMap((row) =>
    [
      ...windowSense(row),
      ...ageSense(row),
      ...routeSense(row),
      ...besideOthers(
        row,
        intervals.filter((other) => other !== row),
      ),
    ].map((refusal) => ({ address: addressOf("intervals", row.id), refusal })),
  );
