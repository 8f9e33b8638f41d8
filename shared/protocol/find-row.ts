import type { ProtocolRow } from "#shared/protocol/interval-row.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import type { Factor } from "#shared/tube/vocabulary.ts";

export type RowQuestion = {
  readonly kind: TubeKind;
  readonly factors: readonly Factor[];
  readonly under18: boolean;
  /** True while the catheter in place is the one that the tract was made for. */
  readonly firstCatheter: boolean;
};

/** `no row`: the table has none for this kind. `no example for a child`: the table is for adults, so ask. */
export type RowAnswer =
  | { readonly found: "row"; readonly row: ProtocolRow }
  | { readonly found: "no row" }
  | { readonly found: "no example for a child" };

const ceiling = (row: ProtocolRow): number => row.latest ?? row.target ?? Number.POSITIVE_INFINITY;

/** The kind's row, or the shortest of its rows for a factor that this patient has: the shorter interval wins. */
export function findRow(protocol: Protocol, question: RowQuestion): RowAnswer {
  if (question.under18) return { found: "no example for a child" };
  const turn = question.firstCatheter ? "first" : "later";
  const rows = protocol.intervals
    .filter((row) => row.kind === question.kind && (row.turn === "any" || row.turn === turn))
    .filter((row) => row.factor === null || question.factors.includes(row.factor));
  const shortest = rows.toSorted((a, b) => ceiling(a) - ceiling(b))[0];
  return shortest === undefined ? { found: "no row" } : { found: "row", row: shortest };
}
